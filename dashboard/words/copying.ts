/** Makes a copy of a find, to change one answer and see both. */
export const COPYING = "Copy to ask what if";
/** The same among several finds, before the name of each. */
export const COPY_IT = "Copy it";
