import { capital, count } from "./count.ts";
import { bareHours } from "./time.ts";

/** A find with figures, as a title counts it. */
export interface TitledRow {
  /** Inside a sentence: "the plum hybrid". */
  readonly called: string;
  readonly chosen: boolean;
  readonly rate: number;
  readonly margin: number;
}

/** "8 hours hold two; the copper track bike comes next". */
export function meritTitle(
  chosen: number,
  hours: number | null,
  nextIn: { readonly called: string; readonly needsHours: boolean } | null,
): string {
  const rest = nextIn === null ? "" : `; ${nextIn.called} comes next`;
  // Where something else than hours is lacking, hours are not what holds.
  if (hours === null || (nextIn !== null && !nextIn.needsHours))
    return `${chosen === 1 ? "One is in" : `${capital(count(chosen))} are in`}${rest}`;
  const hold = hours === 1 ? "1 hour holds" : `${bareHours(hours)} hours hold`;
  return `${hold} ${count(chosen)}${rest}`;
}

/** "The plum hybrid earns most by the hour; the copper track bike leaves most in all". */
export function hoursTitle(rows: readonly TitledRow[]): string {
  const [first, ...others] = rows;
  if (first === undefined) return "No find has figures";
  const by = (key: "rate" | "margin") =>
    others.reduce((best, one) => (one[key] > best[key] ? one : best), first);
  const [fastest, largest] = [by("rate"), by("margin")];
  if (largest.margin <= 0) return rows.length === 1 ? "It loses money" : "None of these leaves money";
  if (rows.length === 1) return `${capital(first.called)} leaves money`;
  if (fastest === largest) return `${capital(fastest.called)} earns most by the hour, and in all`;
  return `${capital(fastest.called)} earns most by the hour; ${largest.called} leaves most in all`;
}

/** "Five of seven sell for more than the cash in them". */
export function costTitle(rows: readonly { readonly value: number; readonly cost: number }[]): string {
  const above = rows.filter(({ value, cost }) => value > cost).length;
  if (rows.length === 0) return "No find has a price";
  if (rows.length === 1)
    return above === 1 ? "It sells for more than the cash in it" : "It sells for less than the cash in it";
  if (above === 0) return "None sells for more than the cash in it";
  const who =
    above === rows.length ? `All ${count(above)}` : `${capital(count(above))} of ${count(rows.length)}`;
  return above === 1
    ? `${who} sells for more than the cash in it`
    : `${who} sell for more than the cash in them`;
}
