/** Texts of the page about selling before a find is chosen, and of a bicycle that is none of the finds. */
export const SELLING_PAGE = {
  which: "Which one do you sell?",
  change: "Change what it is",
  another: "Another bicycle",
  anotherTitle: "Selling another bicycle",
  what: "What do you sell?",
  fourAnswers: "Four answers, and the plan stands. Kept in this browser.",
} as const;
