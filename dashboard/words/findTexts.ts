/** Texts that a find's page shares with the stand. */
export const FIND_NO_FIGURE = "While this stands, no figure is worked out.";
export const FIND_NOT_CERTIFIED =
  "The checks screen the bike; they do not certify it. The final check still stands.";
