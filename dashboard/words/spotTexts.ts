import { capital } from "./count.ts";

/** Texts of the page on the spot, that hold no figure. */
export const SPOT_OUT = "To the finds; what you saw is kept";
export const SPOT_CAUTION = "A caution";
export const SPOT_GO_ON_LOOKING = "Go on looking";
export const SPOT_BOTH_ALIKE = "Both wheels alike";
export const SPOT_HOW_IN_FULL = "How, in full";
export const SPOT_DECIDE = "Decide on what you saw";
export const SPOT_PUT_OFF = "Put off so far";
export const SPOT_LOOK_NOW = "Look now";
export const SPOT_AT_HOME = "at home";
export const SPOT_LOOK_ON = "Look on";
/** Spoken after what is changed by a press. */
export const SPOT_CHANGE = ", change";
export const SPOT_GLOVES = "Gloves on";
export const SPOT_HANDLES = "Keys and description";
export const SPOT_WHAT_IT_IS = "What it is";
export const SPOT_ALL_DETAILS = "All the details";

/** "You saw: play in the hub." */
export function youSaw(seen: string): string {
  return `You saw: ${capital(seen)}.`;
}

/** "Other looks (4)", on the fold with what is still open; "All looks" where none stands before it. */
export function looksFold(n: number, other: boolean): string {
  return `${other ? "Other looks" : "All looks"} (${n})`;
}

/** Whether keys answer, and the button that takes back a pick or a look. */
export const SPOT_KEYS = "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo";
export const SPOT_CHANGE_IT = "Change";
