/** What is said under the masthead of invented finds and prices, and the links beside it. */
export const DEMO_FINDS = "Invented finds.";
export const DEMO_START_WITH_OWN = "Start with my own";
export const DEMO_OR = "or";
export const DEMO_USE_PRICES = "use my own prices";
/** What a find of one's own is called there. */
export const OWN_FIND = "Your own find";

/** That the prices a find is held against are invented, in short. */
export function inventedPrices(partly: boolean): string {
  return partly ? "Partly invented prices." : "Invented prices.";
}

/**
 * What a find is held against.
 * @param called what the find is called at the head of a sentence
 * @param partly some of the prices are the user's own
 */
export function heldAgainst(called: string, partly: boolean): string {
  return partly
    ? `${called} is held against your own sales and invented demo ones.`
    : `${called} is held against invented demo sales; no price here is a market price.`;
}

/** That the workshop of the demo finds does not exist, and where prices come from. */
export function inventedWorkshop(partly: boolean): string {
  const prices = partly
    ? "prices come from your own sales and invented demo ones."
    : "no price here is a market price.";
  return `The Lockhouse workshop in Brindlehythe does not exist; ${prices}`;
}
