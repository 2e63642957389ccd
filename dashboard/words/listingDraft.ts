import { moneyRange } from "./range.ts";

/** Texts of the form that writes the draft of an advert; the advert's own words stand in its catalogue. */
export const DRAFT_TEXTS = {
  untick: "Untick what was not done: its faults then stand in the text.",
  soldIn: "Sold in which state?",
  price: "Asking price",
  priceHint: "Left empty, the text keeps a blank to fill.",
  priceWrong: "Ask nothing or more.",
  text: "Text of the advert, yours to change",
  changed: "You changed this text: it no longer follows the state, the jobs and the price picked above.",
  anew: "Write it anew",
  copy: "Copy the text",
  print: "Print the sheets",
  before: "Before you publish",
  photos: "Photographs to take",
  /** Spoken before a price that one press takes over. */
  ask: "Ask",
} as const;
/** The panel that the draft is folded into. */
export const DRAFT_FOLD = {
  title: "When you sell it: what the advert must say",
  holds: "Draft of the advert, list of pictures, bill of sale",
  failed: "The draft could not be fetched. Fold it up and open it again.",
} as const;
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
