/** Where an address names a find that is not kept in this browser. */
export const NO_SUCH_FIND = {
  title: "No such find",
  here: "There is no find here by that name.",
  yours: "There is no find of yours by that name in this browser.",
  stay: "Your own finds stay in the browser in which they were described.",
} as const;
