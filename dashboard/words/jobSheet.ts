import type { CourseId, ReportedPlan } from "../api/types.ts";
import { COURSE_WORDS } from "./course.ts";
import { DECIDE_AGAIN } from "./plan.ts";
import { between } from "./range.ts";
import { bareHours } from "./time.ts";

/** Heads and texts of the job sheet. */
export const JOB_SHEET_SHARED = "Taking apart and putting back, once for all jobs";
export const JOB_SHEET_WORK = "The work, in order";
export const JOB_SHEET_CAUTIONS = "Before you begin";
export const JOB_SHEET_BESIDE = "Beside the plan";
export const JOB_SHEET_TOOK = ", took";
export const JOB_SHEET_MIN = "min";
export const JOB_SHEET_STOP = "Stop";

/** "Special tools: a crank puller." */
export function specialTools(tools: readonly string[]): string {
  return `Special tools: ${tools.join("; ")}.`;
}

/** How long the work of a course is likely to take, and what rules over the sheet's figures. */
export function workRange(course: CourseId, { minutes }: ReportedPlan): string {
  const hours = between(bareHours(minutes.p10 / 60), bareHours(minutes.p90 / 60), " and ");
  return `${COURSE_WORDS[course].name}: likely between ${hours} hours of work, 8 outcomes in 10. Torques and limits are customary: the marking on the part rules.`;
}

/** The same on paper, where nothing else says what to decide. */
export const DECIDE_AGAIN_HERE = `decide again: ${DECIDE_AGAIN}`;
