/** What one can do with a find that was sent, and its mark once it is kept. */
export const SHARED_KEEP = "Keep it";
export const SHARED_KEPT_ALREADY = "You keep this find already.";
export const SHARED_OPEN_YOURS = "Open yours";
export const SHARED_WITH_YOU = "shared with you";
