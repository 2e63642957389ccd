import { grouped } from "./figure.ts";
import { many } from "./ownPrices.ts";

/** Texts of the panel with the user's own sales as one find sees them. */
export const COMPARABLES = {
  none: "No sale of your own yet",
  title: "What your own sales did",
  /** Before the link to one's own prices, and the link. */
  noneFacts:
    "Every figure here comes from invented demo sales. Each bicycle you saw sold or offered where you sell moves them. Add one here, or many from a file under",
  yourPrices: "your prices",
  readAs: "Each is read as this bike: differences of description and season are taken off.",
  allPrices: "All your prices",
  sameModel: "same model",
  surprising: "Far from all else: look at the price and description again.",
} as const;
/** Names of a sale's figures. */
export const COMPARABLE_FIGURES = {
  goingRate: "Before haggling",
  says: "This bike would fetch",
  moves: "Moves the middle",
} as const;
/** Texts of the form that adds the sale of a bicycle like the find. */
export const QUICK_SALE = {
  title: "Add the sale of a bicycle like this one",
  likeness: "How like this one was it?",
  same: "The same model",
  ofItsKind: "Another of its kind",
  ofItsKindDetail: "same kind, decade, frame and tier",
  condition: "In what condition? (optional)",
  /** Before and after the link to one's own prices. */
  anyOther: "Any other bicycle goes under",
  described: ", with a description of its own.",
} as const;

/** "2 sales in another currency than EUR are left out." */
export function leftOutAbroad(n: number, currency: string): string {
  return `${many(n, "sale")} in another currency than ${currency} ${n === 1 ? "is" : "are"} left out.`;
}

/** "10 of 24 shown, those that count most first." */
export function comparablesShown(shown: number, of: number): string {
  return `${shown} of ${grouped(of)} shown, those that count most first.`;
}
