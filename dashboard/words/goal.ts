import { goalMoney } from "./money.ts";

/** What one more hour must earn: texts of the flag that shows it and of the box that changes it. */
export const GOAL_TEXTS = {
  /** Spoken before the word on the flag's button. */
  yours: "your hourly goal,",
  change: "change",
  label: "What one more hour must earn",
  unit: "an hour",
  hint: "Kept in this browser. Every find is worked out anew.",
} as const;

/** Between which goals one may be set, inclusive. */
export function goalBounds(least: number, most: number, currency: string): string {
  return `Set it between ${goalMoney(least, currency)} and ${goalMoney(most, currency)}.`;
}

/** "goal €15", on the flag in a chart. */
export function goalFlag(goal: number, currency: string): string {
  return `goal ${goalMoney(goal, currency)}`;
}
