/** Texts of the first page, that hold no figure. */
export const FINDS_TEXTS = {
  /** Over the page until the first answer has come. */
  question: "What does an hour on each find earn?",
  look: "Look at a bike",
  describe: "Describe one",
  chart:
    "Margin for each hour of your time, on the best course; invented finds, beside any of your own. The mark is the long-run rate; the bar holds 8 outcomes in 10.",
  blankSheet: "Print a blank inspection sheet for a bike you will look at",
} as const;
