import { grouped } from "./figure.ts";
import { goalMoney, money } from "./money.ts";

/** What a set is chosen for. */
export const OBJECTIVE_WORDS = {
  netBenefit: {
    label: "What is left after your goal is paid",
    detail: "your own hours count as a cost",
  },
  margin: { label: "Money left", detail: "your own hours cost nothing" },
} as const;
/** Names of the budgets. */
export const HOURS = "Hours";
export const CASH = "Cash";
export const NO_LIMIT = "No limit";

/** " on hours", spoken after "No limit". */
export function onBudget(name: string): string {
  return `on ${name.toLowerCase()}`;
}

/** "Hours, exact": the field beside the slider. */
export function exactly(name: string): string {
  return `${name}, exact`;
}

/** What a budget may be. */
export function budgetBounds(most: number, whole: boolean): string {
  return `Set ${whole ? "a whole number" : "a number"} between 0 and ${grouped(most)}, or take no limit.`;
}

/** "Left after €15 an hour". */
export function leftAfter(goal: number, currency: string): string {
  return `Left after ${goalMoney(goal, currency)} an hour`;
}

/** "and after the €30 that leaving the others costs". */
export function afterLeaving(cost: number, currency: string): string {
  return `and after the ${money(cost, currency)} that leaving the others costs`;
}

/** Before a range. */
export const OUTCOMES_IN_TEN = "8 outcomes in 10:";
export const IN_TEN = "8 in 10:";
