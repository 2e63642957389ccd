import { many } from "./ownPrices.ts";

/** Texts of the form that adds a sale, and of taking a removal back. */
export const SALE_PRICE = "Price";
export const SALE_PAID_OR_ASKED = "Was that paid or asked?";
export const SALE_DAY = "Day of the sale or the advert";
export const SALE_ADD = "Add the sale";
export const SALE_TAKE_BACK = "Take it back";

/** "Show 200 more". */
export function showMore(n: number): string {
  return `Show ${n} more`;
}

/** "Removed 1 sale and 2 prices." */
export function removedWords(sales: number, prices: number): string {
  const what = [sales > 0 ? many(sales, "sale") : "", prices > 0 ? many(prices, "price") : ""];
  return `Removed ${what.filter((part) => part !== "").join(" and ")}.`;
}
