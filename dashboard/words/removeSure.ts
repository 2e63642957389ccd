export const FIND_REMOVE_SURE = "Remove this find for good?";

export const FIND_REMOVE = "Remove for good";

export const FIND_KEEP = "Keep it";
