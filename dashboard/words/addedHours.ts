import type { CourseOutcome } from "../api/types.ts";
import { stepFrom, stepTo } from "../courses/step.ts";
import { COURSE_WORDS } from "./course.ts";
import { goalMoney, rate } from "./money.ts";
import { hours } from "./time.ts";

/**
 * What the last hours of a course earn: "the last 6 h earn €7 each: below your €12".
 * Null where the course has no last hours of its own: off the envelope, or with nothing but leaving before it.
 */
export function lastHours(
  course: CourseOutcome,
  courses: readonly CourseOutcome[],
  goal: number,
  currency: string,
): string | null {
  const step = stepTo(course, courses);
  if (step === null || step.from === "leave") return null;
  return `the last ${hours(step.hours)} earn ${each(step.rate, goal, currency)}`;
}

/** What more hours on a find would earn: "restoring takes 6 h more, at €7 each: below your €12". */
export function moreHours(
  course: CourseOutcome,
  courses: readonly CourseOutcome[],
  goal: number,
  currency: string,
): string | null {
  const step = stepFrom(course, courses);
  if (step === null || course.course === "leave") return null;
  return `${COURSE_WORDS[step.course].doing} takes ${hours(step.hours)} more, at ${each(step.rate, goal, currency)}`;
}

/** The one of the two that decides: the last hours where the course has some, else what more would earn. */
export function addedHours(
  course: CourseOutcome,
  courses: readonly CourseOutcome[],
  goal: number,
  currency: string,
): string | null {
  return lastHours(course, courses, goal, currency) ?? moreHours(course, courses, goal, currency);
}

function each(value: number, goal: number, currency: string): string {
  const side = value < goal ? "below" : "above";
  return `${rate(value, currency)} each: ${side} your ${goalMoney(goal, currency)}`;
}
