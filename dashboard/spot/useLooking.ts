import { useEffect, useReducer, useRef, useState } from "preact/hooks";
import { messagesAt } from "../api/fault.ts";
import type { Appraisal, Check, Observation } from "../api/types.ts";
import type { FindAsking } from "../state/finds.ts";
import { adviceOf } from "./advice.ts";
import type { StageProps } from "./OnTheSpot.tsx";
import { without } from "./observed.ts";
import { nextLook, type Queue, queueOf } from "./order.ts";
import { type Look, type LookStep, type Step, sameLook } from "./trail.ts";

/** How long a card waits for the answer to its look before the next one comes in the old order. */
const PATIENCE_MS = 300;

/** The same for the first card. */
const FIRST_PATIENCE_MS = 1500;

/** What is in sight: a card, the caution that the last look raised, a stop, or the end. */
export interface Looking {
  readonly sight: "waiting" | "card" | "caution" | "stopped" | "end";
  /** The look of the card, or of the caution. */
  readonly look: Look | null;
  readonly queue: Queue;
  /** What was pressed on the card, while its answer is under way. */
  readonly pending: Pending | null;
  /** Ids of the hard cautions that the last look raised. */
  readonly raised: readonly string[];
  /** Nothing more is worth its minute, or the user has looked enough. */
  readonly decided: boolean;
  answer(look: Look, observation: Observation, pressed: Pending): void;
  /** Can't tell, or later. */
  pass(look: Look, how: "cannot-tell" | "later"): void;
  undo(): void;
  /** Opens a look again. */
  reopen(look: Look): void;
  /** Ends the looking; or looks on. */
  decide(enough: boolean): void;
  /** Goes on from a caution. */
  goOn(): void;
}

/** An answer under way. */
export interface Pending {
  /** The level pressed; null for a measurement. */
  readonly level: string | null;
}

interface Held {
  readonly look: Look;
  /** Length of the trail when it came into sight. */
  readonly at: number;
}

type LookingProps = Pick<StageProps, "own" | "trail" | "onStep" | "onUndo"> & {
  readonly asking: FindAsking;
  /** Those that apply to the bike. */
  readonly checks: readonly Check[];
  /** Notes what the step just taken did to the offer. */
  readonly onOffer: (step: LookStep, offer: number) => void;
};

/** The order of the looks. The card in sight stays until it is answered, whatever the answers say meanwhile. */
export function useLooking(props: LookingProps): Looking {
  const { own, trail, asking, checks, onStep, onUndo, onOffer } = props;
  const appraisal = asking.answer.value;
  const fault = asking.fault.value;
  const isSettled = asking.status.value === "settled";
  const queue = queueOf(checks, own.answers.observations, trail, adviceOf(appraisal));

  const held = useRef<Held | null>(null);
  const watched = useRef<{ readonly step: LookStep; readonly hard: ReadonlySet<string> } | null>(null);
  const [pending, setPending] = useState<Pending | null>(null);
  const [raised, setRaised] = useState<readonly string[]>([]);
  const [isDeciding, setDeciding] = useState(false);
  const [looksOn, setLooksOn] = useState(false);
  // An answer to what was said before the price was told orders nothing.
  const [isReady, setReady] = useState(isSettled);
  const [, redraw] = useReducer((n: number) => n + 1, 0);

  // The answer to the last look: what it did to the offer, and whether it raised a hard caution.
  useEffect(() => {
    const watch = watched.current;
    if (watch === null || !isSettled) return;
    setPending(null);
    // Where no answer came, what the look raised is told once one does.
    if (fault !== null && fault.kind !== "refused") return;
    watched.current = null;
    if (fault !== null || appraisal === null) return;
    setRaised(hardOf(appraisal).filter((id) => !watch.hard.has(id)));
    if (appraisal.decision.walkAwayPrice !== null) onOffer(watch.step, appraisal.decision.walkAwayPrice);
  }, [isSettled, appraisal, fault, trail.length, onOffer]);

  useEffect(() => {
    if (isSettled) setReady(true);
    const timer = setTimeout(() => setReady(true), FIRST_PATIENCE_MS);
    return () => clearTimeout(timer);
  }, [isSettled]);

  useEffect(() => {
    // A measurement may be refused: its card waits for the answer.
    if (pending === null || pending.level === null) return;
    const timer = setTimeout(() => setPending(null), PATIENCE_MS);
    return () => clearTimeout(timer);
  }, [pending]);

  const isRefused = (check: string) => messagesAt(fault, `/observations/${check}`).length > 0;
  const isDone = ({ look, at }: Held) =>
    !checks.some(({ id }) => id === look.check) ||
    (trail.slice(at).some((step) => answers(step, look)) && !isRefused(look.check));
  const isFree = isReady && pending === null && raised.length === 0;
  if (isFree && (held.current === null || isDone(held.current))) {
    const look = nextLook(queue, trail, looksOn);
    held.current = look === null ? null : { look, at: trail.length };
  }
  const look = held.current?.look ?? null;

  const sight = (): Looking["sight"] => {
    if (appraisal !== null && appraisal.decision.stop !== null) return "stopped";
    if (raised.length > 0) return "caution";
    if (!isReady || (appraisal === null && fault === null)) return "waiting";
    return look === null || isDeciding ? "end" : "card";
  };

  /** The card that asks for a look: where both wheels were answered at once, that of the front. */
  const cardOf = ({ check, position }: Look): Look => {
    const perWheel = checks.some((one) => one.id === check && one.perWheel);
    return { check, position: position ?? (perWheel ? "front" : null) };
  };
  const show = (next: Held | null) => {
    held.current = next;
    setPending(null);
    setRaised([]);
    setDeciding(false);
    redraw(undefined);
  };

  return {
    sight: sight(),
    look,
    queue,
    pending,
    raised,
    decided: isDeciding || queue.worth.length === 0,
    answer(at, observation, pressed) {
      const before = own.answers.observations[at.check];
      const offer = isSettled ? (appraisal?.decision.walkAwayPrice ?? null) : null;
      const step: LookStep = {
        kind: "look",
        how: "seen",
        ...at,
        ...(before === undefined ? {} : { before }),
        set: observation,
        ...(offer === null ? {} : { offerBefore: offer }),
      };
      const hard = watched.current?.hard ?? new Set(appraisal === null ? [] : hardOf(appraisal));
      watched.current = { step, hard };
      setPending(pressed);
      onStep(step);
    },
    pass(at, how) {
      const said = own.answers.observations[at.check];
      // What was refused, or is to be taken back, is no longer said.
      const kept = said === undefined ? {} : { before: said };
      const left = without(said, at);
      onStep({ kind: "look", how, ...at, ...kept, ...(left === undefined ? {} : { set: left }) });
    },
    undo() {
      watched.current = null;
      const last = onUndo();
      show(last?.step.kind === "look" ? { look: cardOf(last.step), at: last.rest.length } : null);
    },
    reopen: (at) => show({ look: cardOf(at), at: trail.length }),
    decide(enough) {
      const [put] = queue.worth;
      if (!enough && look === null && put !== undefined) show({ look: put, at: trail.length });
      else if (!enough && queue.worth.length === 0) setLooksOn(true);
      setDeciding(enough);
    },
    goOn: () => setRaised([]),
  };
}

function hardOf({ cautions }: Appraisal): readonly string[] {
  return cautions.filter(({ kind }) => kind === "hard").map(({ id }) => id);
}

/** Whether a step answers a look: itself, or both wheels at once. */
function answers(step: Step, look: Look): boolean {
  return (
    step.kind === "look" && step.check === look.check && (step.position === null || sameLook(step, look))
  );
}
