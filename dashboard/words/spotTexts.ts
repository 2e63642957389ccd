import { capital } from "./count.ts";

/** Texts of the page on the spot, that hold no figure. */
export const SPOT_TEXTS = {
  out: "To the finds; what you saw is kept",
  caution: "A caution",
  goOnLooking: "Go on looking",
  bothAlike: "Both wheels alike",
  howInFull: "How, in full",
  decide: "Decide on what you saw",
  putOff: "Put off so far",
  lookNow: "Look now",
  atHome: "at home",
  lookOn: "Look on",
  /** Spoken after what is changed by a press. */
  change: ", change",
  gloves: "Gloves on",
  handles: "Keys and description",
  whatItIs: "What it is",
  allDetails: "All the details",
} as const;

/** "You saw: play in the hub." */
export function youSaw(seen: string): string {
  return `You saw: ${capital(seen)}.`;
}

/** "Other looks (4)", on the fold with what is still open; "All looks" where none stands before it. */
export function looksFold(n: number, other: boolean): string {
  return `${other ? "Other looks" : "All looks"} (${n})`;
}
