/** Over the page until the first answer has come. */
export const FINDS_QUESTION = "What does an hour on each find earn?";
/** Texts of the first page, that hold no figure. */
export const FINDS_LOOK = "Look at a bike";
export const FINDS_DESCRIBE = "Describe one";
export const FINDS_CHART =
  "Margin for each hour of your time, on the best course; invented finds, beside any of your own. The mark is the long-run rate; the bar holds 8 outcomes in 10.";
export const FINDS_BLANK_SHEET = "Print a blank inspection sheet for a bike you will look at";
