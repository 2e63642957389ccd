/** Texts of the page that chooses a set, that hold no figure. */
export const SET_HAVE = "What you have";
export const SET_FOR_ALL = "For all of them together. Kept in this browser.";
export const SET_PLACES = "Places on the floor";
export const SET_CHOOSE_FOR = "Choose for the most of";
export const SET_LEFT = "Money left";
export const SET_HOURS_PAID = "your own hours paid";
export const SET_CASH = "Cash in use";
export const SET_ALL_OUT = "if all of it is out at once";
export const SET_FREE = "Let it choose";
export const SET_LEAVE_ANYWAY = "Leave in any case";
export const SET_NONE_FITS = "No set fits.";
export const SET_FREE_ONE = "Let one of them choose freely, or allow more.";
export const SET_SAVE_SET = "Save the set as CSV";

/** Over the page that chooses a set until it is chosen. */
export const WHICH_GO_TOGETHER = "Which of your finds go together?";

/** That of one's own prices only some are used for so many finds. */
export function pricesLeftOut(used: number, of: number): string {
  return `With so many finds only the newest ${used} of your ${of} prices are used here.`;
}
