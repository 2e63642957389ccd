import type { CourseId, CourseOutcome } from "../api/types.ts";

/** The hours that a course takes beyond the one before it, and what each of them earns. */
export interface Step {
  readonly course: CourseId;
  readonly from: CourseId;
  readonly hours: number;
  readonly rate: number;
}

/** Share by which the slope of two courses may miss the reported figure and still be the one meant. */
const TOLERANCE = 1e-3;

/**
 * The step that ends in a course: the course with fewer hours against which its margin rises by the reported
 * added margin per added hour. Null off the upper envelope, and for its first course.
 */
export function stepTo(course: CourseOutcome, courses: readonly CourseOutcome[]): Step | null {
  const rate = course.addedMarginPerAddedHour;
  if (rate === null || course.margin === null || course.hours === null) return null;
  for (const other of courses) {
    if (other.margin === null || other.hours === null) continue;
    const hours = course.hours.mean - other.hours.mean;
    if (hours <= 0) continue;
    const slope = (course.margin.mean - other.margin.mean) / hours;
    if (Math.abs(slope - rate) <= TOLERANCE * Math.max(1, Math.abs(rate))) {
      return { course: course.course, from: other.course, hours, rate };
    }
  }
  return null;
}

/** The step that starts from a course: what the next hours on it would earn. Null where nothing on the envelope takes longer. */
export function stepFrom(course: CourseOutcome, courses: readonly CourseOutcome[]): Step | null {
  for (const other of courses) {
    const step = stepTo(other, courses);
    if (step !== null && step.from === course.course) return step;
  }
  return null;
}
