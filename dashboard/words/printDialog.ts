/** Texts of the box that prints sheets for the bench. */
export const PRINT_TITLE = "Print for the bench";
export const PRINT_WHICH = "Which sheets";
export const PRINT_COURSE = "The work of which course?";
export const PRINT_PAPER = "A4, black.";
export const PRINT_BLANK = "A blank inspection sheet for another bike";

/** "Print 2 sheets". */
export function printLabel(n: number): string {
  return `Print ${n === 1 ? "one sheet" : `${n} sheets`}`;
}
