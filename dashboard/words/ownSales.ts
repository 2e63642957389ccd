import { listed } from "./count.ts";
import { grouped } from "./figure.ts";
import { many } from "./ownPrices.ts";

/** Texts of one's own sales, and of the form that adds one. */
export const SALE_BY_HAND = "Add one sale by hand";
export const SALE_NAME = "What you call it (optional)";
export const SALE_PRICE = "Price";
export const SALE_PAID_OR_ASKED = "Was that paid or asked?";
export const SALE_DAY = "Day of the sale or the advert";
export const SALE_KNOWN = "What is known of it (optional)";
export const SALE_STATE = "State";
export const SALE_CONDITION = "Condition";
export const SALE_ORIGINALITY = "How original was it?";
export const SALE_DESIRABILITY = "Was anything about it sought after?";
export const SALE_ADD = "Add the sale";
export const SALE_TAKE_BACK = "Take it back";

/** "12 sales of your own". */
export function salesTitle(sales: number): string {
  return sales === 0 ? "No sale of your own yet" : `${many(sales, "sale")} of your own`;
}

/** "50 of 1,204 shown, newest first." */
export function salesShown(shown: number, of: number): string {
  return `${shown} of ${grouped(of)} shown, newest first.`;
}

/** "Show 200 more". */
export function showMore(n: number): string {
  return `Show ${n} more`;
}

/** "Same model as the grey one": the finds by name, or that none is named yet. */
export function sameModelAs(finds: readonly string[]): string {
  return `Same model as ${finds.length === 0 ? "a find" : listed(finds)}`;
}

/** What the boxes to tick are. */
export function sameModelLegend(sale: string): string {
  return `Finds that are the same model as ${sale}`;
}

/** "Removed 1 sale and 2 prices." */
export function removedWords(sales: number, prices: number): string {
  const what = [sales > 0 ? many(sales, "sale") : "", prices > 0 ? many(prices, "price") : ""];
  return `Removed ${what.filter((part) => part !== "").join(" and ")}.`;
}
