import { randomNumbers } from "../../../data/scripts/randomNumbers.ts";
import type {
  GroupOption,
  MultipleChoiceProblem,
} from "../../../worker/engine/optimization/multipleChoice.ts";

/** How values follow uses: loosely, as among finds that differ, or closely, where every course pays much the same an hour and so hardly one stands out. */
export type Likeness = "loose" | "close";

const COURSES = 4;

/**
 * Invented finds on a bench: each can be left (nothing gained or used) or taken through one of four courses that use hours, cash and a place on the floor. About a
 * third of what every find's dearest course would use is there.
 */
export function seededChoice(seed: number, groups: number, likeness: Likeness): MultipleChoiceProblem {
  const random = randomNumbers(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const course = (): GroupOption => {
    const hours = between(1, 15);
    const cash = between(10, 200);
    const value =
      likeness === "loose"
        ? hours * between(4, 16) + cash * between(0, 0.4) + between(-20, 40)
        : hours * 10 + cash * 0.3 + between(0, 6);
    return { value, use: [hours, cash, 1] };
  };
  const drawn = Array.from({ length: groups }, () => [
    { value: 0, use: [0, 0, 0] },
    ...Array.from({ length: COURSES }, course),
  ]);
  const budgets = [0, 1, 2].map(
    (budget) =>
      drawn.reduce((sum, options) => sum + Math.max(...options.map(({ use }) => use[budget]!)), 0) / 3,
  );
  return { groups: drawn, budgets: [budgets[0]!, budgets[1]!, Math.ceil(budgets[2]!)] };
}
