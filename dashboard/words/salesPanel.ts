import { listed } from "./count.ts";
import { grouped } from "./figure.ts";
import { many } from "./ownPrices.ts";

/** "12 sales of your own". */
export function salesTitle(sales: number): string {
  return sales === 0 ? "No sale of your own yet" : `${many(sales, "sale")} of your own`;
}

/** "50 of 1,204 shown, newest first." */
export function salesShown(shown: number, of: number): string {
  return `${shown} of ${grouped(of)} shown, newest first.`;
}

/** "Same model as the grey one": the finds by name, or that none is named yet. */
export function sameModelAs(finds: readonly string[]): string {
  return `Same model as ${finds.length === 0 ? "a find" : listed(finds)}`;
}

/** What the boxes to tick are. */
export function sameModelLegend(sale: string): string {
  return `Finds that are the same model as ${sale}`;
}
