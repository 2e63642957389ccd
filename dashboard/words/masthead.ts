/** Texts of the masthead beside the names of the places. */
export const MASTHEAD = {
  skip: "Skip to the page",
  /** Names of the two lists of places, for whoever does not see where they stand. */
  main: "Main",
  below: "Main, below",
} as const;
