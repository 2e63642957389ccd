/** Where an address names a find that is not in this browser. */
export const NO_SUCH_FIND_HERE = "There is no find here by that name.";
export const NO_SUCH_FIND_STAY = "Your own finds stay in the browser in which they were described.";
