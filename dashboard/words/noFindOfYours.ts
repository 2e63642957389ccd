export const NO_SUCH_FIND_YOURS = "There is no find of yours by that name in this browser.";
