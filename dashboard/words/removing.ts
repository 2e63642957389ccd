/** What is asked before a find of one's own is removed. */
export const REMOVING = {
  sure: "Remove this find for good?",
  remove: "Remove for good",
  keep: "Keep it",
} as const;
