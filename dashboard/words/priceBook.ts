import { many } from "./ownPrices.ts";

/** Texts of one's own prices of parts. */
export const BOOK_FACTS = "A part with a price of yours is worked out with it, in every find.";
export const BOOK_PART = "Part, consumable or service";
export const BOOK_CHOOSE = "Choose one";
export const BOOK_COST = "What one costs you";
export const BOOK_ADD = "Add the price";
export const BOOK_NO_PART = "Choose a part.";
export const BOOK_NO_COST = "Write what one costs.";

/** "3 prices of your own". */
export function bookTitle(prices: number): string {
  return prices === 0 ? "No price of your own yet" : `${many(prices, "price")} of your own`;
}

/** " per metre", after a price; empty for what is bought by the piece. */
export function perUnit(unit: string): string {
  return unit === "each" ? "" : ` per ${unit}`;
}
