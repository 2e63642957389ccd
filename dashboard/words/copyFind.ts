/** On the button that copies a find: among several finds, and on a find's own page. */
export const COPY_IT = "Copy it";
export const COPY_TO_ASK = "Copy to ask what if";
