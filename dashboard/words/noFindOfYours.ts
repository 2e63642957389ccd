/** Where a form's address names a find that is not kept in this browser. */
export const NO_SUCH_FIND_YOURS = "There is no find of yours by that name in this browser.";
