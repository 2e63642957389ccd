import type { AppraisalBody, AttributeName } from "../api/types.ts";
import { FIELD_NAMES } from "../words/fields.ts";
import { type Answers, NO_ANSWERS } from "./answers.ts";
import type { SoFar } from "./soFar.ts";

const NAMES = Object.keys(FIELD_NAMES) as readonly AttributeName[];
const DESCRIBED = [
  "rearSprockets",
  "beadSeatDiameterMm",
  "tyreMarking",
  "desirability",
  "originality",
] as const;
const BOUGHT = ["price", "paid", "travelMinutes", "travelCost"] as const;

/**
 * The answers that put a question: `bodyOf` turns them back into it. The goal and the user's own prices are left
 * out, since they are no answers about the find.
 */
export function answersOf({ find, observations, workshop }: AppraisalBody): Answers {
  return {
    ...NO_ANSWERS,
    attributes: picked(find, NAMES),
    ...picked(find, DESCRIBED),
    ...picked(find.purchase ?? {}, BOUGHT),
    ...picked(workshop ?? {}, ["month"]),
    ...(find.soFar === undefined ? {} : { soFar: soFarOf(find.soFar) }),
    observations: observations ?? {},
  } as Answers;
}

function soFarOf({ done = [], bought = [], ...spent }: NonNullable<AppraisalBody["find"]["soFar"]>): SoFar {
  const each = bought.map(({ part, quantity = 1, reuseValue = 0 }) => ({ part, quantity, reuseValue }));
  return { ...spent, done, bought: each } as SoFar;
}

/** The fields named that the object holds. */
function picked<T extends object, K extends keyof T>(from: T, names: readonly K[]): Partial<Pick<T, K>> {
  const held = names.filter((name) => from[name] !== undefined).map((name) => [name, from[name]]);
  return Object.fromEntries(held) as Partial<Pick<T, K>>;
}
