import type { Answers } from "../answers/answers.ts";
import { answersOf } from "../answers/answersOf.ts";
import { isRecord, parsedAnswers } from "../answers/parsed.ts";
import { DEMO_FINDS } from "../finds/demo.ts";
import type { Find } from "../finds/find.ts";
import { LONGEST_NAME, type OwnFind } from "../finds/own.ts";
import { fingerprint } from "./fingerprint.ts";

/** What is passed on of a find: its name, what was said and seen of it, and what is asked for it. */
export interface SharedFind {
  readonly name: string;
  readonly answers: Answers;
  /** Id of the invented find it is a copy of: it stays labelled as invented. */
  readonly copyOf?: string;
}

/** A find without what is the workshop's own affair: what was paid, spent, done and bought, and the way there. */
export function sharedFind(find: Find, own: OwnFind | undefined): SharedFind {
  const origin = find.copyOf ?? find.id;
  return {
    name: own === undefined ? find.name : own.name,
    answers: passedOn(own?.answers ?? answersOf(find.body)),
    ...(isDemo(origin) ? { copyOf: origin } : {}),
  };
}

function passedOn(answers: Answers): Answers {
  const { price, paid, travelMinutes: _t, travelCost: _c, soFar: _s, ...rest } = answers;
  return { ...rest, ...(price === undefined || paid === true ? {} : { price }) };
}

/** A shared find from what was read out of a link; null where it is none. Of what it holds, the parts of the right shape are taken. */
export function sharedFindIn(value: unknown): SharedFind | null {
  if (!isRecord(value) || !isRecord(value.answers)) return null;
  const name = typeof value.name === "string" ? value.name.slice(0, LONGEST_NAME) : "";
  const copied = typeof value.copyOf === "string" && isDemo(value.copyOf) ? { copyOf: value.copyOf } : {};
  return { name, answers: passedOn(parsedAnswers(value.answers)), ...copied };
}

const isDemo = (id: string) => DEMO_FINDS.some((demo) => demo.id === id);

/** The find as one's own. Its id follows from its contents, so that the same find is never kept twice. */
export function ownFrom(shared: SharedFind): OwnFind {
  return { id: `shared-${fingerprint(shared)}`, ...shared };
}

/**
 * The find that is kept already, if any: the one that was kept from this link, whatever became of it since, or another
 * that says just the same (the sender's own).
 */
export function keptAlready(shared: SharedFind, kept: readonly OwnFind[]): OwnFind | undefined {
  const { id } = ownFrom(shared);
  const says = fingerprint({ name: shared.name, answers: shared.answers });
  return (
    kept.find((one) => one.id === id) ??
    kept.find(({ name, answers }) => fingerprint({ name, answers: passedOn(answers) }) === says)
  );
}
