/** Texts of the page that chooses a set, that hold no figure. */
export const SET_TEXTS = {
  have: "What you have",
  forAll: "For all of them together. Kept in this browser.",
  places: "Places on the floor",
  chooseFor: "Choose for the most of",
  left: "Money left",
  hoursPaid: "your own hours paid",
  cash: "Cash in use",
  allOut: "if all of it is out at once",
  free: "Let it choose",
  leaveAnyway: "Leave in any case",
  noneFits: "No set fits.",
  freeOne: "Let one of them choose freely, or allow more.",
  saveSet: "Save the set as CSV",
} as const;

/** Over the page that chooses a set until it is chosen. */
export const WHICH_GO_TOGETHER = "Which of your finds go together?";

/** That of one's own prices only some are used for so many finds. */
export function pricesLeftOut(used: number, of: number): string {
  return `With so many finds only the newest ${used} of your ${of} prices are used here.`;
}
