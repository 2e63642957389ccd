import { anHour, money, rate } from "./money.ts";

/** "€5 to €28"; one figure where both round to the same. */
export function between(low: string, high: string, joint = " to "): string {
  return low === high ? `about ${low}` : `${low}${joint}${high}`;
}

export function moneyRange(low: number, high: number, currency: string): string {
  return between(money(low, currency), money(high, currency));
}

export function rateRange(low: number, high: number, currency: string): string {
  return between(rate(low, currency), rate(high, currency));
}

/** "€16 an hour, likely between €5 and €28"; the range is 8 outcomes in 10. */
export function likelyRate(figures: { rate: number; p10: number; p90: number }, currency: string): string {
  const low = rate(figures.p10, currency);
  const high = rate(figures.p90, currency);
  const figure = anHour(figures.rate, currency);
  return low === high ? `${figure}, hardly more or less` : `${figure}, likely between ${low} and ${high}`;
}
