import { type Answers, withAnswer, withAttribute, withObservation } from "../answers/answers.ts";
import type { AttributeName, Observation } from "../api/types.ts";

/** One thing to look at: a check, and which wheel where it is made at each. */
export interface Look {
  readonly check: string;
  /** Null for a check of the whole bike. */
  readonly position: "front" | "rear" | null;
}

/** What came of a look. */
export type LookedHow = "seen" | "cannot-tell" | "later";

/** One of the four picks, made or changed. */
export interface PickStep {
  readonly kind: "pick";
  readonly name: AttributeName;
  readonly before?: string;
  readonly set: string;
}

/** The asking price was asked for; `set` is left out where it is not known. In the currency of the answers. */
export interface PriceStep {
  readonly kind: "price";
  readonly before?: number;
  readonly set?: number;
}

/** A look that was made, could not be told, or was put off. */
export interface LookStep extends Look {
  readonly kind: "look";
  readonly how: LookedHow;
  /** What the find said of the check before and after. */
  readonly before?: Observation;
  readonly set?: Observation;
  /** The most to offer before and after it; left out where no answer told it for just this step. */
  readonly offerBefore?: number;
  readonly offerAfter?: number;
}

/** One answer given on the spot, in the order given, with what it takes to undo it. */
export type Step = PickStep | PriceStep | LookStep;

/** The same answers with the step taken. */
export function taken(answers: Answers, step: Step): Answers {
  if (step.kind === "pick") return withAttribute(answers, step.name, step.set);
  if (step.kind === "price") return withAnswer(answers, "price", step.set);
  return withObservation(answers, step.check, step.set);
}

/** The same answers without the step. */
export function undone(answers: Answers, step: Step): Answers {
  if (step.kind === "pick") return withAttribute(answers, step.name, step.before);
  if (step.kind === "price") return withAnswer(answers, "price", step.before);
  return withObservation(answers, step.check, step.before);
}

/** Whether the answers still say what the step made them say: they may have been changed elsewhere since. */
function stands(answers: Answers, step: Step): boolean {
  if (step.kind === "pick") return answers.attributes[step.name] === step.set;
  if (step.kind === "price") return answers.price === step.set;
  return JSON.stringify(answers.observations[step.check]) === JSON.stringify(step.set);
}

/** The last step that can be undone, with the trail before it; null where there is none. Steps overtaken elsewhere are passed by. */
export function lastOf(
  answers: Answers,
  trail: readonly Step[],
): { readonly step: Step; readonly rest: readonly Step[] } | null {
  const at = trail.findLastIndex((step) => stands(answers, step));
  const step = trail[at];
  return step === undefined ? null : { step, rest: trail.slice(0, at) };
}

export function sameLook(a: Look, b: Look): boolean {
  return a.check === b.check && a.position === b.position;
}

/** The looks of a trail, each as it was last answered, in the order of those last answers. */
export function looksOf(trail: readonly Step[]): readonly LookStep[] {
  const looks = trail.filter((step) => step.kind === "look");
  return looks.filter((step, i) => !looks.slice(i + 1).some((later) => sameLook(later, step)));
}

/** Whether the asking price was asked for on the spot. */
export function isPriceAsked(trail: readonly Step[]): boolean {
  return trail.some(({ kind }) => kind === "price");
}
