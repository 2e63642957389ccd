/** Texts that stand in more than one place, the same in each. */
export const WORKING = "Working it out";
/** In place of an answer that did not come, or was refused. */
export const NO_ANSWER = "No answer yet";
export const TRY_AGAIN = "Try again";
export const WHAT_TO_DO = "What to do";
export const MARGIN_PER_HOUR = "Margin per hour";
/** Head of the column with a range. */
export const EIGHT_IN_TEN = "8 in 10 between";
/** What mark and bar of a rate are. */
export const MARK_AND_BAR = "The mark is the long-run rate. The bar holds 8 outcomes in 10.";
export const AS_A_TABLE = "Show as a table";
/** For the chart's ground below nought, and the key of its hatch. */
export const LOSES_MONEY = "loses money";
/** On buttons, the same wherever they stand. */
export const REMOVE = "Remove";
/** Before the sum of a table. */
export const IN_ALL = "In all";
export const DONE = "Done";
/** Of a list to choose from, where nothing is chosen. */
export const UNKNOWN = "Unknown";
/** The link from a form to the find's own page. */
export const WHOLE_ANSWER = "See the whole answer";
/** The mark of a find of one's own, and of an invented one, on a page about it alone. */
export const YOUR_OWN = "your own";
export const INVENTED_FIND = "invented find";
