import type { CourseId, ReportedPlan } from "../api/types.ts";
import { COURSE_WORDS } from "./course.ts";
import { figure } from "./figure.ts";
import { between } from "./range.ts";
import { bareHours } from "./time.ts";

/** Blanks to fill at the head of a sheet. */
export const HEAD_BLANKS = ["Date", "By", "Frame number"] as const;
/** What a box says where it is not seen. */
export const BOX = { ticked: "ticked", toTick: "to tick" } as const;
/** Marks on the inspection sheet. */
export const INSPECTION_MARKS = {
  first: "look first",
  owed: "owed",
  made: "made",
  stops: "(stops)",
} as const;
/** Heads and texts of the job sheet. */
export const JOB_SHEET = {
  shared: "Taking apart and putting back, once for all jobs",
  work: "The work, in order",
  cautions: "Before you begin",
  beside: "Beside the plan",
  took: ", took",
  min: "min",
  stop: "Stop",
} as const;
/** Of the list to tick before anyone rides. */
export const BEFORE_RIDING = {
  title: "Before anyone rides it",
  paper: "not to be sold while it stands",
  cured: "cured and looked at again",
  looked: "looked at",
} as const;
/** Of the shopping list, beside the heads that it shares with the screen. */
export const SHOPPING_SHEET = {
  paid: "Paid",
  yours: "yours",
  measure: "Measure first",
  size: "Size",
  forPart: "For",
  seenIn: "Seen in the check",
  read: "Read",
} as const;

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
