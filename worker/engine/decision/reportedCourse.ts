import type { Appraisal, CourseOutcome } from "./appraisal.ts";
import type { Book } from "./book.ts";
import { addedMarginPerAddedHour } from "./envelope.ts";
import { outcomeOf } from "./outcome.ts";
import { reportPlan } from "./reportedPlan.ts";
import type { SettledRequest } from "./settledRequest.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

/** The five courses as they are told. */
export function reportCourses(
  courses: readonly WeighedCourse[],
  settled: SettledRequest,
  book: Book,
): Appraisal["courses"] {
  const added = addedMarginPerAddedHour(
    courses.map((course) =>
      course.open ? { hours: course.expected.hours, margin: course.expected.margin } : null,
    ),
  );
  return courses.map((course, place) =>
    course.open ? reportOpen(course, added[place]!, settled, book) : closed(course.course, course.because),
  );
}

function reportOpen(
  open: OpenCourse,
  added: number | null,
  settled: SettledRequest,
  book: Book,
): CourseOutcome {
  const { course } = open;
  const outcome = outcomeOf(open.branches, settled.workshop);
  return {
    course,
    available: true,
    margin: outcome.margin,
    hours: outcome.hours,
    marginPerHour: course === "leave" ? null : outcome.marginPerHour,
    addedMarginPerAddedHour: added,
    lossProbability: outcome.lossProbability,
    belowGoalProbability: course === "leave" ? null : outcome.belowGoalProbability,
    netBenefit: outcome.netBenefit,
    rightToChange: open.unknown ? open.rightToChange : null,
    cashNeeded: open.cashNeeded,
    elapsedDays: elapsedDays(open, book),
    plan: reportPlan(open, settled),
  };
}

/** Waiting for parts where any are ordered, evenings of work, and the days until it is sold. */
function elapsedDays({ plan, expected, course }: OpenCourse, book: Book): number {
  const { partsWaitDays, hoursPerEvening, sellingDays } = book.catalogue.defaults.calendar;
  const waits = plan.extras.some(({ kind }) => kind === "delivery") ? partsWaitDays : 0;
  const sale = course === "leave" ? 0 : sellingDays;
  return waits + Math.ceil(expected.hours / hoursPerEvening) + sale;
}

function closed(course: CourseOutcome["course"], because: string): CourseOutcome {
  return {
    course,
    available: false,
    unavailableBecause: because,
    margin: null,
    hours: null,
    marginPerHour: null,
    addedMarginPerAddedHour: null,
    lossProbability: null,
    belowGoalProbability: null,
    netBenefit: null,
    rightToChange: null,
    cashNeeded: null,
    elapsedDays: null,
    plan: null,
  };
}
