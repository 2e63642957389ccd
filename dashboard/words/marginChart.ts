import type { CourseId } from "../api/types.ts";
import { EIGHT_IN_TEN } from "./common.ts";
import { COURSE_WORDS } from "./course.ts";
import { goalMoney } from "./money.ts";

/** Texts of the chart of what an hour on each find earns. */
export const MARGIN_BY_FIND = "Margin per hour by find";
/** What the chart's signs mean. */
export const CHART_KEY_FULL = "fuller colour: beats your goal";
export const CHART_KEY_DASHED = "dashed: hardly looked at yet";
export const CHART_KEY_HATCHED = "hatched: loses money";
export const CHART_KEY_SPOKE = "a spoke for each group of checks looked at";
/** In the table, where more hours on a find change nothing. */
export const NO_ADDED_HOURS = "no added hours";

/** "your goal €15/h", on the flag. */
export function yourGoal(goal: number, currency: string): string {
  return `your goal ${goalMoney(goal, currency)}/h`;
}

/** "best other: restore", where the verdict is to leave the find. */
export function bestOther(course: CourseId): string {
  return `best other: ${COURSE_WORDS[course].name.toLowerCase()}`;
}

/** Heads of the chart's table. */
export function ratesHead(goal: number, currency: string): readonly string[] {
  return ["Find", "Course", "An hour", EIGHT_IN_TEN, `Misses ${goalMoney(goal, currency)}`, "Added hours"];
}

/** "Restore", "Leave (best other: restore)". */
export function courseTold(verdict: CourseId, shown: CourseId): string {
  return verdict === "leave" ? `Leave (${bestOther(shown)})` : COURSE_WORDS[shown].name;
}
