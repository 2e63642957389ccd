import type { Fault } from "../api/fault.ts";
import { money } from "./money.ts";

/** What the bar at the foot of a form is. */
export const VERDICT_SO_FAR = "Verdict so far";

/**
 * Under the figure itself: "most to offer, was €24".
 * @param before what it was before the last answer; null where that changed nothing
 */
export function mostToOffer(before: number | null, currency: string): string {
  return before === null ? "most to offer" : `most to offer, was ${money(before, currency)}`;
}

/** "Most to offer: €41." */
export function offerSpoken(most: number, currency: string): string {
  return `Most to offer: ${money(most, currency)}.`;
}

/**
 * Why the figures are not newer.
 * @param told what was put in: what you "entered" or "saw"
 */
export function barTrouble(fault: Exclude<Fault, { kind: "refused" }>, told: "entered" | "saw"): string {
  return fault.kind === "no-signal"
    ? `No signal. What you ${told} is kept and is asked again later.`
    : `The service failed. What you ${told} is kept.`;
}

/** "2 answers are refused; the figures are those from before." */
export function answersRefused(n: number): string {
  return `${n > 1 ? `${n} answers are` : "An answer is"} refused; the figures are those from before.`;
}
