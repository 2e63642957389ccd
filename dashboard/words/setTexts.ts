/** Texts of the page that chooses a set, and of finds side by side, that hold no figure. */
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

export const COMPARE_TEXTS = {
  same: "The same for all",
  notSaid: "not said",
  addOrDrop: "Add or drop",
  save: "Save as CSV",
} as const;
