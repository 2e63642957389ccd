import { priceWords } from "./money.ts";

/** Texts of the picks and the price before the first look on the spot. */
export const SPOT_START_KEEP = "Keep it as it is";
export const SPOT_START_GO_ON_WITH_YOURS = "Go on with one of yours";
/** Before and after the link to the long form. */
export const SPOT_START_AT_HOME = "At home with time?";
export const SPOT_START_ON_ONE_PAGE = "on one page.";
export const SPOT_START_WHAT_ASKED = "What do they ask?";
export const SPOT_START_REST_UNKNOWN = "All else counts as unknown, never as good.";
export const SPOT_START_PRICE = "Asking price";
export const SPOT_START_GO_ON = "Go on";
export const SPOT_START_FOR_NOTHING = "For nothing";
export const SPOT_START_NOT_KNOWN = "Not known yet";
export const SPOT_START_NO_PRICE = "Write a price, or take one of the two below.";
/** A price below nought was typed. */
export const NO_LESS_THAN_NOTHING = "A price is nothing or more.";

/** "2 of 4 picks.", before the hint of the pick. */
export function pickOf(n: number, of: number): string {
  return `${n} of ${of} picks.`;
}

/** "Asking price: €70.", or that it is not known. */
export function askingPrice(price: number | undefined, currency: string): string {
  return `Asking price: ${price === undefined ? "not known" : priceWords(price, currency)}.`;
}
