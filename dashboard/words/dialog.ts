export const CLOSE = "Close";
