/** Asks before a find of one's own is removed, with its two answers. */
export const REMOVE_SURE = "Remove this find for good?";
export const REMOVE_FOR_GOOD = "Remove for good";
export const KEEP_IT = "Keep it";
