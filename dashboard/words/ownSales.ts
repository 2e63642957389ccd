import { listed } from "./count.ts";
import { grouped } from "./figure.ts";
import { many } from "./ownPrices.ts";

/** Texts of one's own sales, and of the form that adds one. */
export const SALE_TEXTS = {
  byHand: "Add one sale by hand",
  name: "What you call it (optional)",
  price: "Price",
  paidOrAsked: "Was that paid or asked?",
  day: "Day of the sale or the advert",
  known: "What is known of it (optional)",
  state: "State",
  condition: "Condition",
  originality: "How original was it?",
  desirability: "Was anything about it sought after?",
  add: "Add the sale",
  takeBack: "Take it back",
} as const;

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
