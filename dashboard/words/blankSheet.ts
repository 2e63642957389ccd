/** Texts of the page that prints an inspection sheet for a bike that is not described yet. */
export const BLANK_SHEET = {
  which: "Which bike will you look at?",
  facts:
    "The sheet holds the checks that apply to it, to fill in by hand. What you leave open is taken as it mostly is on such a bike.",
  kind: "What kind is it?",
  print: "Print the sheet",
} as const;
