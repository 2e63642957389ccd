import type { KeptSale } from "./sale.ts";

/** Sales by their day, the newest first; those of one day as they were added, the last first. */
export function newestFirst(sales: readonly KeptSale[]): readonly KeptSale[] {
  return [...sales].reverse().sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
}
