import { figure } from "./figure.ts";
import { roundTo } from "./money.ts";

/** Hours to the tenth, trailing nought left out: "8.9 h", "6 h". */
export function hours(value: number): string {
  return `${bareHours(value)} h`;
}

export function bareHours(value: number): string {
  return figure(roundTo(value, 0.1), 1);
}

/** A sentence of the API's in the screen's words for time: "5.0 h" becomes "5 h". */
export function withHours(text: string): string {
  return text.replace(/(\d+\.\d+) h\b/g, (_, told: string) => hours(Number(told)));
}

/** Whole minutes: "40 min". */
export function minutes(value: number): string {
  return `${figure(roundTo(value, 1))} min`;
}

/** Days as weeks from a fortnight on: "9 days", "3 weeks". */
export function days(value: number): string {
  const whole = roundTo(value, 1);
  if (whole < 14) return whole === 1 ? "1 day" : `${whole} days`;
  return `${roundTo(value / 7, 1)} weeks`;
}
