/** Makes a copy of a find, to change one answer and see both. */
export const COPYING = "Copy to ask what if";
