/** Texts of the choice of what to sell. */
export const CHOICE_TEXTS = {
  finds: "One of the finds",
  another: "Or another bicycle",
  enough: "Kind, age, frame, tier and state are enough. The more of it is known, the narrower the range.",
  sellAnother: "Sell another bicycle",
  inFull: "Describe it in full",
  notYet: "not worked out yet",
} as const;
