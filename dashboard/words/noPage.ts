/** Where there is no page to show: none at the address, none that came, no catalogue. */
export const NO_PAGE_TITLE = "Nothing here";
export const NO_PAGE_NOWHERE = "There is no page at this address.";
export const NO_PAGE_NOT_COME = "This page did not come.";
export const NO_PAGE_NO_ANSWER = "No answer";
export const NO_PAGE_NO_CATALOGUE = "The catalogue of checks and prices did not come.";
