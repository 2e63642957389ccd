/** How the stand behaves. */
export const CONTROL_ALL = "Buttons, keys and lengths";
export const CONTROL_GLOVES = "Gloves on: larger buttons";
export const CONTROL_LENGTHS = "Lengths in";
export const CONTROL_KEYS = "Keys";
export const STAND_KEYS = "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo, / find";
