import { sentence } from "./plain.ts";

/** Texts of a find's page that hold no figure. */
export const FIND_TEXTS = {
  whatToAsk: "What to ask for it",
  whenDown: "When to come down, what to take",
  whereFrom: "What to ask, and what the price comes from",
  onlyLeaving: "No course but leaving is open.",
  noFigure: "While this stands, no figure is worked out.",
  shared: "Taking apart and putting back, shared and counted once",
  notCertified: "The checks screen the bike; they do not certify it. The final check still stands.",
  partsFetch: "What the parts would fetch",
  givenAway: "Given away or recycled",
  piecesToList: "Pieces to list, dearest takings first",
  piecesNote: "Sold: it turns out fit to sell and finds a buyer. Brings: on average, fee and post taken off.",
  nothingToBuy: "Nothing to buy for it.",
  yourPrice: "your price",
  unlikeData: "Unlike anything in the data, so the range is wide.",
  dots: "Margin over the whole job. Each dot is 1 outcome in 20; hatched dots lose money.",
  planOf: "Plan of which course",
  breakEven: "received from the buyer, your hours unpaid.",
  notCounted: "shown, not counted.",
  notForNothing: "Not even for nothing",
  change: "Change or look further",
  removeSure: "Remove this find for good?",
  remove: "Remove for good",
  keep: "Keep it",
  copyIt: "Copy it",
  share: "Share",
  print: "Print",
  likelyPrice: "Likely price by state",
  whatIf: "Copy to ask what if",
} as const;

/** "More reasons (3)", on the fold that holds them. */
export function moreReasons(n: number): string {
  return `More reasons (${n})`;
}

/** "from: the flea market." */
export function fromWhere(where: string): string {
  return sentence(`from: ${where}`);
}
