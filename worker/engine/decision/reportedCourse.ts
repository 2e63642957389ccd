import type { ExpectedSale } from "../selling/demand/wholeSale.ts";
import type { Appraisal, CourseOutcome } from "./appraisal.ts";
import type { Book } from "./book.ts";
import { addedMarginPerAddedHour } from "./envelope.ts";
import { outcomeOf } from "./outcome.ts";
import { daysToSell, plannedSales } from "./plannedSales.ts";
import { reportPlan } from "./reportedPlan.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";

/** The five courses as they are told. */
export function reportCourses(courses: readonly WeighedCourse[], situation: Situation): Appraisal["courses"] {
  const added = addedMarginPerAddedHour(
    courses.map((course) =>
      course.open ? { hours: course.expected.hours, margin: course.expected.margin } : null,
    ),
  );
  const sales = plannedSales(situation, courses);
  return courses.map((course, place) =>
    course.open
      ? reportOpen(course, added[place]!, situation, sales[place]!)
      : closed(course.course, course.because),
  );
}

function reportOpen(
  open: OpenCourse,
  added: number | null,
  situation: Situation,
  sale: ExpectedSale | null,
): CourseOutcome {
  const { course } = open;
  const { settled, book } = situation;
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
    elapsedDays: workDays(open, book) + daysToSell(course, sale, situation),
    sale,
    plan: reportPlan(open, settled),
  };
}

/** Waiting for parts where any are ordered, and evenings of work. */
function workDays({ plan, expected }: OpenCourse, book: Book): number {
  const { partsWaitDays, hoursPerEvening } = book.catalogue.defaults.calendar;
  const waits = plan.extras.some(({ kind }) => kind === "delivery") ? partsWaitDays : 0;
  return waits + Math.ceil(expected.hours / hoursPerEvening);
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
    sale: null,
    plan: null,
  };
}
