/** Texts of the page about what to ask for a find. */
export const SOLD_IN_STATE = "Sold in which state?";

export const NOTHING_TO_ASK = "While this stands, no figure is worked out, and nothing to ask.";

export const PLAN_ADVERT = "What the advert must say";
