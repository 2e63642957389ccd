import type { CourseId, ReportedPlan } from "../api/types.ts";
import { COURSE_WORDS } from "./course.ts";
import { figure } from "./figure.ts";
import { between } from "./range.ts";
import { bareHours } from "./time.ts";

/** Blanks to fill at the head of a sheet. */
export const HEAD_BLANKS = ["Date", "By", "Frame number"] as const;
/** What a box says where it is not seen. */
export const BOX_TICKED = "ticked";
export const BOX_TO_TICK = "to tick";
/** Marks on the inspection sheet. */
export const INSPECTION_MARKS_FIRST = "look first";
export const INSPECTION_MARKS_OWED = "owed";
export const INSPECTION_MARKS_MADE = "made";
export const INSPECTION_MARKS_STOPS = "(stops)";
/** Heads and texts of the job sheet. */
export const JOB_SHEET_SHARED = "Taking apart and putting back, once for all jobs";
export const JOB_SHEET_WORK = "The work, in order";
export const JOB_SHEET_CAUTIONS = "Before you begin";
export const JOB_SHEET_BESIDE = "Beside the plan";
export const JOB_SHEET_TOOK = ", took";
export const JOB_SHEET_MIN = "min";
export const JOB_SHEET_STOP = "Stop";
/** Of the list to tick before anyone rides. */
export const BEFORE_RIDING_TITLE = "Before anyone rides it";
export const BEFORE_RIDING_PAPER = "not to be sold while it stands";
export const BEFORE_RIDING_CURED = "cured and looked at again";
export const BEFORE_RIDING_LOOKED = "looked at";
/** Of the shopping list, beside the heads that it shares with the screen. */
export const SHOPPING_SHEET_PAID = "Paid";
export const SHOPPING_SHEET_YOURS = "yours";
export const SHOPPING_SHEET_MEASURE = "Measure first";
export const SHOPPING_SHEET_SIZE = "Size";
export const SHOPPING_SHEET_FOR_PART = "For";
export const SHOPPING_SHEET_SEEN_IN = "Seen in the check";
export const SHOPPING_SHEET_READ = "Read";

/** "Take along: a rule; a torch." */
export function takeAlong(tools: readonly string[]): string {
  return `Take along: ${tools.join("; ")}.`;
}

/** "Special tools: a crank puller." */
export function specialTools(tools: readonly string[]): string {
  return `Special tools: ${tools.join("; ")}.`;
}

/** "2.5 min", to the tenth. */
export function checkMinutes(value: number): string {
  return `${figure(value, 1)} min`;
}

/** How long the work of a course is likely to take, and what rules over the sheet's figures. */
export function workRange(course: CourseId, { minutes }: ReportedPlan): string {
  const hours = between(bareHours(minutes.p10 / 60), bareHours(minutes.p90 / 60), " and ");
  return `${COURSE_WORDS[course].name}: likely between ${hours} hours of work, 8 outcomes in 10. Torques and limits are customary: the marking on the part rules.`;
}

/** "Frame crack: cured and looked at again". */
export function toTick(check: string, what: string): string {
  return `${check}: ${what}`;
}

/** "To buy, expected prices in EUR". */
export function toBuy(currency: string): string {
  return `To buy, expected prices in ${currency}`;
}
