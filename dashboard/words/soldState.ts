/** Texts that both pages about selling a find share. */
export const SOLD_IN_STATE = "Sold in which state?";
export const ADVERT_MUST_SAY = "What the advert must say";
