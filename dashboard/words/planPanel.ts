import type { ReportedPlan } from "../api/types.ts";
import { money } from "./money.ts";
import { between } from "./range.ts";
import { bareHours } from "./time.ts";

/** What the bars of a plan mean. */
export const PLAN_KEY = "Filled: minutes. Open: money. Dashed: your choice, kept because it pays.";

/** "Likely between 5 and 9 hours and €80 and €140, purchase apart." */
export function planRange({ minutes, cost }: ReportedPlan, currency: string): string {
  const time = between(bareHours(minutes.p10 / 60), bareHours(minutes.p90 / 60), " and ");
  const paid = between(money(cost.p10, currency), money(cost.p90, currency), " and ");
  return `Likely between ${time} hours and ${paid}, purchase apart.`;
}

/** Over the steps that jobs share, and the choice of a plan. */
export const PLAN_SHARED = "Taking apart and putting back, shared and counted once";
export const PLAN_OF = "Plan of which course";
