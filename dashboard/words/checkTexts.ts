import { capital } from "./count.ts";

/** Texts of the card on which a check is answered. */
export const CHECK_APART = "Front and rear apart";
export const CHECK_REFUSED = "refused";
export const CHECK_NOT_LOOKED = "Not looked at";
export const CHECK_BY_EYE = "Or judge by eye; a measurement wins";
export const CHECK_LEVELS = "Levels, to judge by eye";
export const CHECK_FINER = "More readings make it finer";
export const CHECK_NO_TOOLS = "no tools";

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
