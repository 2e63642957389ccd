import { capital } from "./count.ts";

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

/** Texts about a tyre's marking and what it says. */
export const MARKING = "Marking on the tyre";
