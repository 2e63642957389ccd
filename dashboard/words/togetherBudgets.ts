import type { ComparisonAnswer } from "../api/types.ts";
import { outOf } from "./chance.ts";
import { capital, count } from "./count.ts";
import { money } from "./money.ts";
import { hours } from "./time.ts";
import { amount, isWorth } from "./together.ts";

type Told = Pick<ComparisonAnswer, "budgets" | "total" | "chanceHoursOverrun" | "shadowPrices">;

const NONE_USED = 1e-9;

/** Under the slider of hours: what is used, how sure it fits, and what one more is worth. */
export function hoursLines(told: Told, currency: string): readonly string[] {
  const { total, budgets, chanceHoursOverrun, shadowPrices } = told;
  if (total === null) return [];
  const lines = total.hours > NONE_USED ? [`${hours(total.hours)} used.`] : ["None used."];
  if (total.hours > NONE_USED) {
    if (budgets.hours !== null && chanceHoursOverrun !== null)
      lines.push(`Takes longer than your ${hours(budgets.hours)} ${outOf(chanceHoursOverrun, 10)}.`);
    lines.push(`For 8 in 10, plan ${amount("hours", total.hoursP80, currency)}.`);
  }
  return [...lines, ...worthLine("One more hour", budgets.hours, shadowPrices?.hour, currency)];
}

/** Under the slider of cash. */
export function cashLines({ total, budgets, shadowPrices }: Told, currency: string): readonly string[] {
  if (total === null) return [];
  const used = total.cash > NONE_USED ? `${money(total.cash, currency)} in use.` : "None in use.";
  return [used, ...worthLine(`${money(1, currency)} more`, budgets.cash, shadowPrices?.cash, currency)];
}

/** Under the slider of places. */
export function slotsLines({ total, budgets, shadowPrices }: Told, currency: string): readonly string[] {
  if (total === null) return [];
  return [
    takenWords(total.slots, budgets.slots),
    ...worthLine("One more", budgets.slots, shadowPrices?.slot, currency),
  ];
}

function takenWords(taken: number, given: number | null): string {
  if (taken === 0) return "None taken.";
  if (given === null) return taken === 1 ? "One taken." : `${capital(count(taken))} taken.`;
  if (taken < given) return `${capital(count(taken))} of ${count(given)} taken.`;
  return given === 1 ? "Taken." : given === 2 ? "Both taken." : "All taken.";
}

function worthLine(one: string, given: number | null, worth: number | undefined, currency: string): string[] {
  return given === null || worth === undefined ? [] : [`${one} ${isWorth(worth, currency)}.`];
}
