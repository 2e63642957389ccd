/** Texts of the fields in which a check is answered. */
export const CHECK_APART = "Front and rear apart";
export const CHECK_NOT_LOOKED = "Not looked at";
export const CHECK_BY_EYE = "Or judge by eye; a measurement wins";

export const CHECK_LEVELS = "Levels, to judge by eye";
export const CHECK_NO_TOOLS = "no tools";
