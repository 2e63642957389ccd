/** Where there is no page to show: none at the address, none that came, no catalogue. */
export const NO_PAGE = {
  title: "Nothing here",
  nowhere: "There is no page at this address.",
  notCome: "This page did not come.",
  noAnswer: "No answer",
  noCatalogue: "The catalogue of checks and prices did not come.",
} as const;
