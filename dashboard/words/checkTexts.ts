import { capital, uncapital } from "./count.ts";

/** Texts of the card of a check. */
export const CHECK_REFUSED = "refused";
export const CHECK_FINER = "More readings make it finer";

/** A measurement's label; one that can be done without says so. */
export function inputLabel(label: string, optional: boolean | undefined): string {
  return `${capital(label)}${optional ? " (if you have it)" : ""}`;
}

/** "5 of 8 made". */
export function madeOf(made: number, of: number): string {
  return `${made} of ${of} made`;
}

/** Name of the field for a tyre's marking. */
export const MARKING = "Marking on the tyre";

/** What was answered to a check, where there is nothing to tell yet. */
export const NOT_LOOKED_AT = "not looked at";
export const STILL_TO_MEASURE = "still to measure";

/** "front open". */
export function wheelOpen(wheel: "front" | "rear"): string {
  return `${wheel} open`;
}

/**
 * "On the line between slight and out (4.2 mm): measure again."
 * @param value what was measured, in brackets, with a space before; empty where it is not known
 */
export function betweenLevels(better: string, worse: string, value: string): string {
  return `On the line between ${uncapital(better)} and ${uncapital(worse)}${value}: measure again.`;
}
