import type { ComparisonAnswer } from "../api/types.ts";
import { type BudgetName, FIRST_TERMS, type SetTerms } from "../state/setTerms.ts";
import { isOpen, isProblem } from "./setRows.ts";

/** Steps of the sliders: half an hour, ten of money, a place. */
export const STEPS: Readonly<Record<BudgetName, number>> = { hours: 0.5, cash: 10, slots: 1 };
const ROUND: Readonly<Record<BudgetName, number>> = { hours: 4, cash: 50, slots: 1 };

/**
 * How far the sliders go: to what all finds together would use, each in the course that uses most, so that at the right end everything fits. A larger
 * amount that was typed stays within.
 * @param answer null before the first one: then to twice what the terms are at first
 */
export function reaches(
  answer: Pick<ComparisonAnswer, "finds"> | null,
  terms: SetTerms,
): Readonly<Record<BudgetName, number>> {
  const most = { hours: 0, cash: 0, slots: 0 };
  for (const one of answer?.finds ?? []) {
    if (isProblem(one)) continue;
    const open = one.courses.filter(isOpen);
    if (open.length === 0) continue;
    most.hours += Math.max(...open.map(({ hours }) => hours.mean));
    most.cash += Math.max(...open.map(({ cashNeeded }) => cashNeeded), 0);
    most.slots += 1;
  }
  const reach = (budget: BudgetName) =>
    Math.max(
      Math.ceil(most[budget] / ROUND[budget]) * ROUND[budget],
      FIRST_TERMS[budget].amount * 2,
      Math.ceil(terms[budget].amount),
    );
  return { hours: reach("hours"), cash: reach("cash"), slots: reach("slots") };
}
