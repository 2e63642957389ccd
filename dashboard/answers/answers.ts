import type { AttributeName, Observations } from "../api/types.ts";
import type { SoFar } from "./soFar.ts";

/** What the user has said about a find so far. Absent is unknown, never good. */
export interface Answers {
  readonly attributes: Partial<Readonly<Record<AttributeName, string>>>;
  readonly rearSprockets?: number;
  readonly beadSeatDiameterMm?: number;
  readonly tyreMarking?: string;
  readonly desirability?: number;
  readonly originality?: number;
  readonly price?: number;
  readonly paid?: boolean;
  /** Minutes to fetch it, there and back. */
  readonly travelMinutes?: number;
  /** Money to fetch it, in the currency of the price. */
  readonly travelCost?: number;
  /** 1 to 12. */
  readonly month?: number;
  /** Where the work has begun. */
  readonly soFar?: SoFar;
  /** By check; a measurement may be half filled in. */
  readonly observations: Observations;
}

export const NO_ANSWERS: Answers = { attributes: {}, observations: {} };

/** The four that are always needed, in the order they are asked. */
export const NEEDED = [
  "category",
  "era",
  "frameMaterial",
  "componentTier",
] as const satisfies AttributeName[];

/** Whether enough is known to ask. */
export function isComplete({ attributes }: Answers): boolean {
  return NEEDED.every((name) => attributes[name] !== undefined);
}

/** The same answers with one changed; undefined takes it out. */
export function withAnswer<K extends keyof Answers>(
  answers: Answers,
  key: K,
  value: Answers[K] | undefined,
): Answers {
  const { [key]: _, ...rest } = answers;
  return (value === undefined ? rest : { ...rest, [key]: value }) as Answers;
}

/** The same answers with one word of the description changed; undefined takes it out. */
export function withAttribute(answers: Answers, name: AttributeName, value: string | undefined): Answers {
  const { [name]: _, ...rest } = answers.attributes;
  return { ...answers, attributes: value === undefined ? rest : { ...rest, [name]: value } };
}

/** The same answers with one observation changed; undefined takes it out. */
export function withObservation(
  answers: Answers,
  check: string,
  observation: Observations[string] | undefined,
): Answers {
  const { [check]: _, ...rest } = answers.observations;
  return { ...answers, observations: observation === undefined ? rest : { ...rest, [check]: observation } };
}
