import { grouped } from "./figure.ts";
import { many } from "./ownPrices.ts";

/** Texts of the panel with the user's own sales as one find sees them. */
export const COMPARABLE_NONE = "No sale of your own yet";
export const COMPARABLE_TITLE = "What your own sales did";
/** Before the link to one's own prices, and the link. */
export const COMPARABLE_NONE_FACTS =
  "Every figure here comes from invented demo sales. Each bicycle you saw sold or offered where you sell moves them. Add one here, or many from a file under";
export const COMPARABLE_YOUR_PRICES = "your prices";
export const COMPARABLE_READ_AS =
  "Each is read as this bike: differences of description and season are taken off.";
export const COMPARABLE_ALL_PRICES = "All your prices";
export const COMPARABLE_SAME_MODEL = "same model";
export const COMPARABLE_SURPRISING = "Far from all else: look at the price and description again.";
/** Names of a sale's figures. */
export const COMPARABLE_FIGURES_GOING_RATE = "Before haggling";
export const COMPARABLE_FIGURES_SAYS = "This bike would fetch";
export const COMPARABLE_FIGURES_MOVES = "Moves the middle";
/** Texts of the form that adds the sale of a bicycle like the find. */
export const QUICK_SALE_TITLE = "Add the sale of a bicycle like this one";
export const QUICK_SALE_LIKENESS = "How like this one was it?";
export const QUICK_SALE_SAME = "The same model";
export const QUICK_SALE_OF_ITS_KIND = "Another of its kind";
export const QUICK_SALE_OF_ITS_KIND_DETAIL = "same kind, decade, frame and tier";
export const QUICK_SALE_CONDITION = "In what condition? (optional)";
/** Before and after the link to one's own prices. */
export const QUICK_SALE_ANY_OTHER = "Any other bicycle goes under";
export const QUICK_SALE_DESCRIBED = ", with a description of its own.";

/** "2 sales in another currency than EUR are left out." */
export function leftOutAbroad(n: number, currency: string): string {
  return `${many(n, "sale")} in another currency than ${currency} ${n === 1 ? "is" : "are"} left out.`;
}

/** "10 of 24 shown, those that count most first." */
export function comparablesShown(shown: number, of: number): string {
  return `${shown} of ${grouped(of)} shown, those that count most first.`;
}
