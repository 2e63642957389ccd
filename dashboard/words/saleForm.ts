/** Texts of the form that adds one sale by hand. */
export const SALE_BY_HAND = "Add one sale by hand";
export const SALE_NAME = "What you call it (optional)";
export const SALE_KNOWN = "What is known of it (optional)";
export const SALE_STATE = "State";
export const SALE_CONDITION = "Condition";
export const SALE_ORIGINALITY = "How original was it?";
export const SALE_DESIRABILITY = "Was anything about it sought after?";
