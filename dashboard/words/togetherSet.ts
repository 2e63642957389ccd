import { capital, count, listed } from "./count.ts";

/** Above the list of the chosen: "Take these two". */
export function setHeading(chosen: number, overrun: boolean): string {
  if (overrun) return "No set fits what you hold to";
  if (chosen === 0) return "Take none";
  return chosen === 1 ? "Take this one" : `Take these ${count(chosen)}`;
}

/** What stands beside the names in a chart's picture: "1 Plum hybrid: make safe". */
export function keyWords(number: number, name: string, course: string, chosen: boolean): string {
  return `${number} ${capital(name)}: ${course.toLowerCase()}${chosen ? ", chosen" : ""}`;
}

/** Over those that are not chosen. */
export const LEFT = "Left";
export const THE_OTHERS = "The others";
/** Why a find stands outside the choice. */
export const LEAVE_ANYWAY = "You leave it in any case.";
export const ONLY_LEAVING_OPEN = "No course but leaving is open.";
export const TO_THE_FIND = "To the find";

/** "the grey one: held to", over the choice of a course. */
export function heldTo(name: string): string {
  return `${name}: held to`;
}

/** "Restore in any case". */
export function inAnyCase(course: string): string {
  return `${course} in any case`;
}

/** Where freeing one of the held finds lets no set fit. */
export function heldTooMany(called: readonly string[]): string {
  return `Letting go of one is not enough. Held: ${listed(called)}. Free several, or allow more.`;
}

/** "Free the grey one". */
export function freeIt(called: string): string {
  return `Free ${called}`;
}

/** "Lift this limit". */
export function liftLimits(n: number): string {
  return `Lift ${n === 1 ? "this limit" : "these limits"}`;
}

/** The same sentence with each figure in hours kept on one line with its unit. */
export function withUnbrokenHours(sentence: string): string {
  return sentence.replace(/(\d) h\b/g, "$1\u00a0h");
}
