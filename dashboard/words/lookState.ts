import { capital } from "./count.ts";

/** What is said of a look in the list of its group. */
export const LOOK_STATE_REFUSED = "refused";
export const LOOK_STATE_CANT_TELL = "can\u2019t tell";
export const LOOK_STATE_NOT_LOOKED = "not looked at";
export const LOOK_STATE_CURED = "cured since";
export const LOOK_STATE_TAKEN_BACK = "taken back";

/** "Chain elongation: can’t tell": what was said of a check, or of the tyre's marking. */
export function saidOf(name: string, said: string): string {
  return `${name}: ${said}`;
}

/** "Front: on the line: measure again."; without a wheel "On the line: measure again." */
export function measureAgain(wheel: "front" | "rear" | null): string {
  return `${wheel === null ? "On" : `${capital(wheel)}: on`} the line: measure again.`;
}

/** What a reading on the line is taken as: "Until then it counts as slight." */
export function countsAs(level: string): string {
  return `Until then it counts as ${level}.`;
}
