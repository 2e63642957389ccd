/** Texts that both pages about selling a find share. */
export const SOLD_IN_STATE = "Sold in which state?";
export const NOTHING_TO_ASK = "While this stands, no figure is worked out, and nothing to ask.";
export const ADVERT_MUST_SAY = "What the advert must say";
