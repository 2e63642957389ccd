import { capital, count } from "./count.ts";
import { goalMoney } from "./money.ts";
import { likelyRate } from "./range.ts";
import { bareHours } from "./time.ts";
import { allOf } from "./together.ts";

/** A find with figures, as a title counts it. */
export interface TitledRow {
  /** Inside a sentence: "the plum hybrid". */
  readonly called: string;
  readonly chosen: boolean;
  readonly rate: number;
  readonly margin: number;
}

/** What the title of the merit order counts. */
export interface MeritTold {
  readonly chosen: number;
  readonly of: number;
  /** Hours there are; null: no limit. */
  readonly hours: number | null;
  readonly nextIn: { readonly called: string; readonly needsHours: boolean } | null;
  /** What is held to does not fit. */
  readonly overrun: boolean;
}

/** "8 hours hold two; the copper track bike comes next". */
export function meritTitle({ chosen, of, hours, nextIn, overrun }: MeritTold): string {
  if (overrun) return "What you hold to does not fit";
  const all = chosen === of && of > 1;
  const rest =
    nextIn !== null ? `; ${nextIn.called} comes next` : chosen === of ? "" : "; nothing else would pay";
  const many = all ? allOf(of) : count(chosen);
  // Where something else than hours is lacking, hours are not what holds.
  if (hours === null || (nextIn !== null && !nextIn.needsHours))
    return `${capital(many)} ${chosen === 1 ? "is" : "are"} in${rest}`;
  return `${hours === 1 ? "1 hour holds" : `${bareHours(hours)} hours hold`} ${many}${rest}`;
}

/** The merit order for whoever does not see it: best, worst, and how many ranges cross the goal. */
export function meritSentence(
  title: string,
  rows: readonly {
    readonly name: string;
    readonly perHour: { readonly rate: number; readonly p10: number; readonly p90: number };
  }[],
  goal: number,
  currency: string,
): string {
  const byRate = [...rows].sort((a, b) => b.perHour.rate - a.perHour.rate);
  const [best] = byRate;
  const worst = byRate.at(-1);
  if (best === undefined || worst === undefined) return `${title}.`;
  const crossing = rows.filter(({ perHour: { p10, p90 } }) => p10 < goal && p90 > goal).length;
  return [
    `${title}.`,
    `Best: ${best.name}, ${likelyRate(best.perHour, currency)}.`,
    `Worst: ${worst.name}, ${likelyRate(worst.perHour, currency)}.`,
    `${crossing} of ${rows.length} ranges cross the goal of ${goalMoney(goal, currency)}.`,
  ].join(" ");
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
    above === rows.length ? capital(allOf(above)) : `${capital(count(above))} of ${count(rows.length)}`;
  return above === 1
    ? `${who} sells for more than the cash in it`
    : `${who} sell for more than the cash in them`;
}
