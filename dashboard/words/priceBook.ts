import { many } from "./ownPrices.ts";

/** Texts of one's own prices of parts. */
export const BOOK_TEXTS = {
  facts: "A part with a price of yours is worked out with it, in every find.",
  part: "Part, consumable or service",
  choose: "Choose one",
  cost: "What one costs you",
  add: "Add the price",
  noPart: "Choose a part.",
  noCost: "Write what one costs.",
} as const;

/** "3 prices of your own". */
export function bookTitle(prices: number): string {
  return prices === 0 ? "No price of your own yet" : `${many(prices, "price")} of your own`;
}

/** " per metre", after a price; empty for what is bought by the piece. */
export function perUnit(unit: string): string {
  return unit === "each" ? "" : ` per ${unit}`;
}
