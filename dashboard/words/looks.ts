/** Texts of answering one check at a time, on the spot and on the stand. */
export const LOOK_CANT_TELL = "Can\u2019t tell";
export const LOOK_LATER = "Later";
export const LOOK_UNDO = "Undo";
export const LOOK_CHANGE = "Change";
export const LOOK_LOOK_ON_ANYWAY = "Look on anyway";
export const LOOK_KEYS = "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo";
export const LOOK_KEYS_AND_FIND = "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo, / find";
