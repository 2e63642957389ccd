import { counted } from "./count.ts";

/** Texts of the form that describes a find, beside the names of its fields. */
export const FORM_WHAT_IS_IT = "What is it?";
export const FORM_WHAT_ASKED = "What do they ask?";
export const FORM_PRICE_HINT = "Empty counts as nothing asked.";
export const FORM_PAID = "Already paid: the price no longer decides";
export const FORM_TRAVEL_HINT = "Counts as your time.";
export const FORM_MONTH = "Month of sale";
export const FORM_NO_MONTH = "Not known: an average";
export const FORM_MORE = "More about it";
export const FORM_ORIGINALITY = "How original is it?";
export const FORM_DESIRABILITY = "Is anything about it sought after?";
export const FORM_BUILD = "How it is built";
/** The unit of minutes in a field. */
export const MIN = "min";

/** How much of what may be told beside the four picks is told: "three details given". */
export function detailsGiven(n: number): string {
  return n === 0 ? "all unknown; each narrows the range" : `${counted(n, "detail")} given`;
}
