import { sentence } from "./plain.ts";

/** Texts of a find's page that hold no figure. */
export const FIND_WHAT_TO_ASK = "What to ask for it";
export const FIND_WHEN_DOWN = "When to come down, what to take";
export const FIND_WHERE_FROM = "What to ask, and what the price comes from";
export const FIND_ONLY_LEAVING = "No course but leaving is open.";
export const FIND_GIVEN_AWAY = "Given away or recycled";
export const FIND_PARTS_FETCH = "What the parts would fetch";
export const FIND_PIECES_NOTE =
  "Sold: it turns out fit to sell and finds a buyer. Brings: on average, fee and post taken off.";
export const FIND_PIECES_TO_LIST = "Pieces to list, dearest takings first";
export const FIND_LIKELY_PRICE = "Likely price by state";
export const FIND_UNLIKE_DATA = "Unlike anything in the data, so the range is wide.";
export const FIND_PRINT = "Print";
export const FIND_SHARE = "Share";
export const FIND_CHANGE = "Change or look further";
export const FIND_DOTS = "Margin over the whole job. Each dot is 1 outcome in 20; hatched dots lose money.";
export const FIND_BREAK_EVEN = "received from the buyer, your hours unpaid.";
export const FIND_NOT_COUNTED = "shown, not counted.";
export const FIND_NOT_FOR_NOTHING = "Not even for nothing";

/** "from: the flea market." */
export function fromWhere(where: string): string {
  return sentence(`from: ${where}`);
}

/** A look that is owed, and what follows the word. */
export const OWED = "Owed";
export const OWED_MEANS = ": no fault is known there, but nobody has looked.";
/** What a find that was sent is called under the masthead. */
export const THIS_FIND = "This find";
