/** Texts of the masthead beside the names of the places. */
export const MASTHEAD_SKIP = "Skip to the page";
/** Names of the two lists of places, for whoever does not see where they stand. */
export const MASTHEAD_MAIN = "Main";
export const MASTHEAD_BELOW = "Main, below";
