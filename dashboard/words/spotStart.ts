/** Texts of the picks and the price before the first look on the spot. */
export const SPOT_START = {
  keep: "Keep it as it is",
  goOnWithYours: "Go on with one of yours",
  /** Before and after the link to the long form. */
  atHome: "At home with time?",
  onOnePage: "on one page.",
  whatAsked: "What do they ask?",
  restUnknown: "All else counts as unknown, never as good.",
  price: "Asking price",
  goOn: "Go on",
  forNothing: "For nothing",
  notKnown: "Not known yet",
  noPrice: "Write a price, or take one of the two below.",
} as const;
/** A price below nought was typed. */
export const NO_LESS_THAN_NOTHING = "A price is nothing or more.";

/** "2 of 4 picks.", before the hint of the pick. */
export function pickOf(n: number, of: number): string {
  return `${n} of ${of} picks.`;
}
