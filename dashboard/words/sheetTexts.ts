import { figure } from "./figure.ts";

/** Blanks to fill at the head of a sheet. */
export const HEAD_BLANKS = ["Date", "By", "Frame number"] as const;
/** What a box says where it is not seen. */
export const BOX_TICKED = "ticked";
export const BOX_TO_TICK = "to tick";
/** Marks on the inspection sheet. */
export const MARK_FIRST = "look first";
export const MARK_OWED = "owed";
export const MARK_MADE = "made";
export const MARK_STOPS = "(stops)";

/** "Take along: a rule; a torch." */
export function takeAlong(tools: readonly string[]): string {
  return `Take along: ${tools.join("; ")}.`;
}

/** "2.5 min", to the tenth. */
export function checkMinutes(value: number): string {
  return `${figure(value, 1)} min`;
}
