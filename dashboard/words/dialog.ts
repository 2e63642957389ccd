/** Closes a box over the page. */
export const CLOSE = "Close";
