/** Texts of the box that prints sheets for the bench. */
export const PRINT_TEXTS = {
  title: "Print for the bench",
  which: "Which sheets",
  course: "The work of which course?",
  paper: "A4, black.",
  blank: "A blank inspection sheet for another bike",
} as const;

/** "Print 2 sheets". */
export function printLabel(n: number): string {
  return `Print ${n === 1 ? "one sheet" : `${n} sheets`}`;
}
