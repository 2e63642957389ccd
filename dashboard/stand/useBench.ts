import { useEffect, useRef, useState } from "preact/hooks";
import type { Answers } from "../answers/answers.ts";
import { answersOf } from "../answers/answersOf.ts";
import type { Fault } from "../api/fault.ts";
import type { Appraisal } from "../api/types.ts";
import { copyOf } from "../finds/copy.ts";
import type { Find } from "../finds/find.ts";
import { askingOf, ownFinds } from "../state/finds.ts";
import { rename, standAt } from "../state/route.ts";
import { setUnsure, unsureOf } from "../state/unsure.ts";

/** One change that can be taken back. */
interface Step {
  /** Id of the find that it changed, or of the copy that it made. */
  readonly of: string;
  readonly before: Pick<Bench, "answers" | "unsure">;
  /** What it said: "Headset play: smooth". */
  readonly said: string;
  /** The check it answered, where it answered one. */
  readonly check: string | null;
  /** The answer before it; what it turned is told against this. */
  readonly answer: Appraisal | null;
}

/** A find on the stand: its answers, what they come to, and how to change them. */
export interface Bench {
  readonly find: Find;
  readonly answers: Answers;
  /** The last answer, until a newer one comes; null before the first. */
  readonly appraisal: Appraisal | null;
  readonly fault: Fault | null;
  readonly status: "settled" | "asking" | "slow";
  /** Checks that could not be told. */
  readonly unsure: readonly string[];
  /** The last change that can be taken back; null where there is none. */
  readonly last: Step | null;
  again(): void;
  /**
   * Changes the answers; an invented find's go into a copy of one's own, which then stands here in its place.
   * @param said what changed, and after a colon how: two changes of the same in a row are one step back
   * @param of the check that was answered, and the checks that cannot be told where that changed too
   */
  put(
    answers: Answers,
    said: string,
    of?: { readonly check?: string; readonly unsure?: readonly string[] },
  ): void;
  undo(): void;
}

/** What a find and its copies share: the invented find that was copied keeps its place on the stand. */
export function rootOf({ id, copyOf: original }: Pick<Find, "id" | "copyOf">): string {
  return original ?? id;
}

export function useBench(find: Find): Bench {
  const [steps, setSteps] = useState<readonly Step[]>([]);
  const asking = askingOf(find.id);
  const own = ownFinds.all.value.find(({ id }) => id === find.id);
  const answers = own?.answers ?? answersOf(find.body);
  const held = useRef<Appraisal | null>(null);
  // A copy has no answer yet: that of its original stands until it has one.
  const appraisal = asking.answer.value ?? held.current;
  useEffect(() => {
    held.current = appraisal;
  }, [appraisal]);
  const unsureNow = unsureOf(find);
  // Another copy of the same original may have stood here: its way back is none of this one's.
  const isOwn = ({ of }: Step) => of === find.id;
  const last = steps.findLast(isOwn) ?? null;

  /** @returns id of the find that holds the answers now */
  const keep = (next: Answers): string => {
    // Of an invented find nothing is copied before something was said about it.
    if (next === answers) return find.id;
    const known = ownFinds.get(find.id);
    if (known !== undefined) {
      ownFinds.put({ ...known, answers: next });
      return find.id;
    }
    const names = ownFinds.all.value.map(({ name }) => name);
    const copy = { ...copyOf(find, undefined, names), answers: next };
    ownFinds.put(copy);
    rename(standAt(copy.id));
    return copy.id;
  };
  return {
    find,
    answers,
    appraisal,
    fault: asking.fault.value,
    status: asking.status.value,
    unsure: unsureNow,
    last,
    again: asking.again,
    put(next, said, { check = null, unsure: cannotTell = unsureNow } = {}) {
      const of = keep(next);
      const step = { of, before: { answers, unsure: unsureNow }, said, check, answer: appraisal };
      // What was said of an invented find before it was copied goes along with its copy.
      setSteps((all) =>
        withStep(
          all.filter(isOwn).map((one) => ({ ...one, of })),
          step,
        ),
      );
      setUnsure(of, cannotTell);
    },
    undo() {
      if (last === null) return;
      setSteps(steps.filter((one) => isOwn(one) && one !== last));
      setUnsure(keep(last.before.answers), last.before.unsure);
    },
  };
}

/** Typing is many changes and one step: one about the same as the step before it takes that step's place, and its way back. */
function withStep(steps: readonly Step[], step: Step): readonly Step[] {
  const last = steps.at(-1);
  if (last === undefined || topic(last.said) !== topic(step.said)) return [...steps, step];
  return [...steps.slice(0, -1), { ...last, said: step.said }];
}

/** What a change is about: the words before the colon. */
function topic(said: string): string {
  return said.slice(0, said.indexOf(":") + 1);
}
