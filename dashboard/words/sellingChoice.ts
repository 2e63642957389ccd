/** Texts of the choice of what to sell. */
export const CHOICE_FINDS = "One of the finds";
export const CHOICE_ANOTHER = "Or another bicycle";
export const CHOICE_ENOUGH =
  "Kind, age, frame, tier and state are enough. The more of it is known, the narrower the range.";
export const CHOICE_SELL_ANOTHER = "Sell another bicycle";
export const CHOICE_IN_FULL = "Describe it in full";
export const CHOICE_NOT_YET = "not worked out yet";
