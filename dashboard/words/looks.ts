/** Texts of answering one check at a time, on the spot and on the stand. */
export const LOOK_CANT_TELL = "Can\u2019t tell";
export const LOOK_LATER = "Later";
export const LOOK_UNDO = "Undo";
export const LOOK_ON_ANYWAY = "Look on anyway";
