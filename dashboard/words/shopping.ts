import type { CourseId } from "../api/types.ts";
import { COURSE_WORDS } from "./course.ts";
import { billed } from "./money.ts";

/** Heads of a list of what to buy. */
export const SHOPPING_HEAD_WHAT = "What";
export const SHOPPING_HEAD_HOW_MUCH = "How much";
export const SHOPPING_HEAD_ONE = "One";
export const SHOPPING_HEAD_SUM = "Sum";

/** "Shopping list: 4 lines, €43.20". */
export function shoppingSummary(lines: number, total: number, currency: string): string {
  return `Shopping list: ${lines} ${lines === 1 ? "line" : "lines"}, ${billed(total, currency)}`;
}

/** What the table holds, for whoever does not see it. */
export function shoppingCaption(course: CourseId): string {
  return `Shopping list to ${COURSE_WORDS[course].name.toLowerCase()}, invented prices but where it says yours`;
}

/** In place of an empty list, and the mark of a price of the user's own. */
export const NOTHING_TO_BUY = "Nothing to buy for it.";
export const YOUR_PRICE = "your price";
