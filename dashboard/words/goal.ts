import { goalMoney } from "./money.ts";

/** Spoken before the word on the flag's button. */
export const GOAL_YOURS = "your hourly goal,";
/** What one more hour must earn: texts of the flag that shows it and of the box that changes it. */
export const GOAL_CHANGE = "change";
export const GOAL_LABEL = "What one more hour must earn";
export const GOAL_UNIT = "an hour";
export const GOAL_HINT = "Kept in this browser. Every find is worked out anew.";

/** Between which goals one may be set, inclusive. */
export function goalBounds(least: number, most: number, currency: string): string {
  return `Set it between ${goalMoney(least, currency)} and ${goalMoney(most, currency)}.`;
}

/** "goal €15", on the flag in a chart. */
export function goalFlag(goal: number, currency: string): string {
  return `goal ${goalMoney(goal, currency)}`;
}
