import type { CourseOutcome } from "../api/types.ts";
import { EIGHT_IN_TEN } from "./common.ts";
import { capital, listed } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { money } from "./money.ts";
import { sentence } from "./plain.ts";
import { moneyRange, rateRange } from "./range.ts";

/** Texts of the panel that sets the courses of a find side by side. */
export const MARGIN_BY_COURSE = "Margin by course";
export const COURSES_HEAD = [
  "Course",
  "Margin",
  EIGHT_IN_TEN,
  "Hours",
  "Likely hours",
  "An hour",
  "Loses",
  "Your goal",
] as const;
export const NOT_OPEN = "not open";
/** Why a course is not open, where the answer names no other reason. */
export const RULED_OUT = "ruled out by what was found";

/** "an hour (€4 to €19)", after the rate itself. */
export function anHourWithin({ p10, p90 }: { p10: number; p90: number }, currency: string): string {
  return `an hour (${rateRange(p10, p90, currency)})`;
}

/** The chart in a sentence: "Restoring brings most. Margin by course. Restore: €120. Make safe: not open." */
export function coursesSentence(title: string, courses: readonly CourseOutcome[], currency: string): string {
  const told = courses.map(({ course, margin }) => {
    const { name } = COURSE_WORDS[course];
    return margin === null ? `${name}: ${NOT_OPEN}.` : `${name}: ${money(margin.mean, currency)}.`;
  });
  return `${title}. ${MARGIN_BY_COURSE}. ${told.join(" ")}`;
}

/** What a course's dots come to: "€120 on average", "8 in 10 between €40 and €190". */
export function marginLines(
  margin: NonNullable<CourseOutcome["margin"]>,
  currency: string,
): readonly string[] {
  return [
    `${money(margin.mean, currency)} on average`,
    `${EIGHT_IN_TEN} ${moneyRange(margin.p10, margin.p90, currency)}`,
  ];
}

/** "Restoring and making safe are not open. The frame is cracked." */
export function closedWords(courses: readonly CourseOutcome[], reason: string): string {
  const verb = courses.length === 1 ? "is" : "are";
  const who = capital(listed(courses.map(({ course }) => COURSE_WORDS[course].doing)));
  return sentence(`${who} ${verb} ${NOT_OPEN}. ${reason}`);
}
