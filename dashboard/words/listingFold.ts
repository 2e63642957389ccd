/** The panel that the draft is folded into. */
export const DRAFT_FOLD_TITLE = "When you sell it: what the advert must say";
export const DRAFT_FOLD_HOLDS = "Draft of the advert, list of pictures, bill of sale";
export const DRAFT_FOLD_FAILED = "The draft could not be fetched. Fold it up and open it again.";
