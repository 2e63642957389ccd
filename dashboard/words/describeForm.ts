import { counted } from "./count.ts";

/** Texts of the form that describes a find, beside the names of its fields. */
export const FORM_TEXTS = {
  whatIsIt: "What is it?",
  whatAsked: "What do they ask?",
  priceHint: "Empty counts as nothing asked.",
  paid: "Already paid: the price no longer decides",
  travelHint: "Counts as your time.",
  month: "Month of sale",
  noMonth: "Not known: an average",
  more: "More about it",
  originality: "How original is it?",
  desirability: "Is anything about it sought after?",
  build: "How it is built",
} as const;
/** The unit of minutes in a field. */
export const MIN = "min";

/** How much of what may be told beside the four picks is told: "three details given". */
export function detailsGiven(n: number): string {
  return n === 0 ? "all unknown; each narrows the range" : `${counted(n, "detail")} given`;
}
