/** Of the shopping list, beside the heads that it shares with the screen. */
export const SHOPPING_SHEET_PAID = "Paid";
export const SHOPPING_SHEET_YOURS = "yours";
export const SHOPPING_SHEET_MEASURE = "Measure first";
export const SHOPPING_SHEET_SIZE = "Size";
export const SHOPPING_SHEET_FOR_PART = "For";
export const SHOPPING_SHEET_SEEN_IN = "Seen in the check";
export const SHOPPING_SHEET_READ = "Read";

/** "To buy, expected prices in EUR". */
export function toBuy(currency: string): string {
  return `To buy, expected prices in ${currency}`;
}
