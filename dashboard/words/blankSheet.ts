/** Texts of the page that prints an inspection sheet for a bike that is not described yet. */
export const BLANK_SHEET_WHICH = "Which bike will you look at?";
export const BLANK_SHEET_FACTS =
  "The sheet holds the checks that apply to it, to fill in by hand. What you leave open is taken as it mostly is on such a bike.";
export const BLANK_SHEET_KIND = "What kind is it?";
export const BLANK_SHEET_PRINT = "Print the sheet";
