import { standingCourses, type Worth } from "../decision/choice.ts";
import type { OpenCourse } from "../decision/weighedCourse.ts";
import type { OpenFind, WeighedFind } from "../decision/weighFind.ts";
import { DomainError } from "../domainError.ts";
import type { GroupOption } from "../optimization/multipleChoice.ts";
import type { Money } from "../quantity.ts";
import type { SubmittedFind } from "./comparison.ts";

/** A find that may be chosen, with the courses it may take; leaving it is the last of them unless it is locked. */
export interface Candidate {
  readonly id: string;
  readonly find: OpenFind;
  readonly locked: boolean;
  readonly options: readonly CandidateOption[];
}

/** A course as the choice of a set sees it: uses are hours, cash and places, in this order. */
export interface CandidateOption extends GroupOption {
  readonly course: OpenCourse;
  readonly use: readonly [hours: number, cash: Money, slots: number];
}

/**
 * The courses that a find brings to the choice; null where it is stopped, for then nothing is.
 * @param worth what is maximised
 * @throws DomainError where the find is to take a course that is closed to it; the pointer begins at its entry
 */
export function candidateOf(
  { id, course: locked }: SubmittedFind,
  find: WeighedFind,
  worth: Worth,
): Candidate | null {
  if (find.stop) {
    if (locked !== null && locked !== "leave") throw closedCourse(locked, find.stop.reason);
    return null;
  }
  const { courses, situation } = find;
  if (locked === null) {
    const options = standingCourses(courses, situation, worth).map((course) => optionOf(course, worth));
    return { id, find, locked: false, options };
  }
  const course = courses.find((one) => one.course === locked)!;
  if (!course.open) throw closedCourse(locked, course.because);
  return { id, find, locked: true, options: [optionOf(course, worth)] };
}

/** A course uses its expected hours, the cash it needs and a place while it is in the house; leaving it uses nothing. */
function optionOf(course: OpenCourse, worth: Worth): CandidateOption {
  const left = course.course === "leave";
  return {
    course,
    value: worth(course),
    use: left ? [0, 0, 0] : [course.expected.hours, Math.max(0, course.cashNeeded), 1],
  };
}

function closedCourse(course: string, because: string): DomainError {
  return new DomainError(
    "out-of-domain",
    "course",
    course,
    `a course that is open to this bike, and ${course} is not (${because.replace(/\.$/, "")}): choose another or leave course out`,
    "/course",
  );
}

/** What the find is worth where it is left. */
export function leftWorth({ options }: Candidate): Money {
  return options.find(({ course }) => course.course === "leave")?.value ?? 0;
}
