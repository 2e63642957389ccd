/** Texts of the page about selling before a find is chosen, and of a bicycle that is none of the finds. */
export const SELLING_PAGE_WHICH = "Which one do you sell?";
export const SELLING_PAGE_CHANGE = "Change what it is";
export const SELLING_PAGE_ANOTHER = "Another bicycle";
export const SELLING_PAGE_ANOTHER_TITLE = "Selling another bicycle";
export const SELLING_PAGE_WHAT = "What do you sell?";
export const SELLING_PAGE_FOUR_ANSWERS = "Four answers, and the plan stands. Kept in this browser.";
/** Over the four answers about it. */
export const SELLING_PAGE_WHAT_IS_IT = "What is it?";
