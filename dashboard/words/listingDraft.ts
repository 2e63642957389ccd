import { moneyRange } from "./range.ts";

/** Texts of the form that writes the draft of an advert; the advert's own words stand in its catalogue. */
export const DRAFT_UNTICK = "Untick what was not done: its faults then stand in the text.";
export const DRAFT_SOLD_IN = "Sold in which state?";
export const DRAFT_PRICE = "Asking price";
export const DRAFT_PRICE_HINT = "Left empty, the text keeps a blank to fill.";
export const DRAFT_PRICE_WRONG = "Ask nothing or more.";
export const DRAFT_TEXT = "Text of the advert, yours to change";
export const DRAFT_CHANGED =
  "You changed this text: it no longer follows the state, the jobs and the price picked above.";
export const DRAFT_ANEW = "Write it anew";
export const DRAFT_COPY = "Copy the text";
export const DRAFT_PRINT = "Print the sheets";
export const DRAFT_BEFORE = "Before you publish";
export const DRAFT_PHOTOS = "Photographs to take";
/** Spoken before a price that one press takes over. */
export const DRAFT_ASK = "Ask";
/** The states in which a find is sold, each with what was done to it. */
export const DRAFT_STATES = {
  asFound: { label: "As found", detail: "no repair made" },
  madeSafe: { label: "Made safe", detail: "the work of that plan is done" },
  restored: { label: "Restored", detail: "the work of that plan is done" },
  parts: { label: "As parts", detail: "piece by piece" },
} as const;

/** "Jobs told as done: 3 of 5". */
export function jobsDone(done: number, of: number): string {
  return `Jobs told as done: ${done} of ${of}`;
}
/**
 * Over the prices to take over, from the lowest to the highest.
 * @param prices ascending
 */
export function middleHalf(prices: readonly number[], currency: string): string {
  const range = moneyRange(prices[0] ?? 0, prices.at(-1) ?? 0, currency);
  return `The middle half of what it fetches, before haggling: ${range}. Ask:`;
}
