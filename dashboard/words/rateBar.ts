import { goalMoney } from "./money.ts";
import { likelyRate } from "./range.ts";

/** The bar in a sentence. */
export function barSentence(
  figures: { rate: number; p10: number; p90: number },
  goal: number,
  currency: string,
): string {
  return `Margin per hour: ${likelyRate(figures, currency)}; your goal is ${goalMoney(goal, currency)}.`;
}
