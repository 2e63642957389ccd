import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { cautionsFor } from "./cautions.ts";
import { bestCourse, breakEvenSalePrice, walkAwayPrice } from "./choice.ts";
import { reportInspection } from "./inspectFind.ts";
import { lookFirst } from "./lookFirst.ts";
import { lookingAt } from "./looking/looking.ts";
import { lookingOn } from "./looking/lookingOn.ts";
import { nextChecks } from "./looking/nextChecks.ts";
import { reasonsFor } from "./reasons.ts";
import { reportCourses } from "./reportedCourse.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { stateValues } from "./stateValues.ts";
import { trustIn } from "./trust.ts";
import { type OpenFind, type StoppedFind, type WeighedFind, weighFind } from "./weighFind.ts";

/**
 * The whole answer for one find: findings, value by state, the five courses with their outcome, the decision, readiness, cautions. First what stops the
 * matter, then what closes courses, then money: net benefit at the user's goal, compared at the margin.
 * Deterministic: the same request and book give the same answer, byte for byte.
 * @throws DomainError with an RFC 6901 pointer into the request
 */
export function appraise(request: AppraisalRequest, book: Book): Appraisal {
  return reportFind(weighFind(request, book), book);
}

/** The answer for a find that was weighed. */
export function reportFind(weighed: WeighedFind, book: Book): Appraisal {
  return weighed.stop ? stopped(weighed, book) : decided(weighed, book);
}

function decided(find: OpenFind, book: Book): Appraisal {
  const { settled, inspection, situation, courses } = find;
  const best = bestCourse(courses, situation);
  const { sensitivity, ...sureness } = trustIn(best, courses, situation);
  const looking = lookingAt(find, best);
  const looks = nextChecks(looking, book);
  const look = lookFirst(looks, settled, book);
  return {
    ...head(settled),
    ...reportInspection(find, book),
    value: stateValues(situation, courses),
    courses: reportCourses(courses, situation),
    decision: {
      course: best.course,
      lookFirst: look?.id ?? null,
      stop: null,
      reasons: reasonsFor(best, courses, situation, look),
      walkAwayPrice: walkAwayPrice(courses, situation),
      breakEvenSalePrice: breakEvenSalePrice(best, situation),
      ...sureness,
    },
    nextChecks: looks,
    lookingOn: lookingOn(looking, looks),
    sensitivity,
    soFar: soFar(settled),
    cautions: cautionsFor(settled, inspection, courses, book),
  };
}

/** No money figure is given: do not pay, do not bargain. */
function stopped(find: StoppedFind, book: Book): Appraisal {
  const { settled, inspection, stop } = find;
  return {
    ...head(settled),
    ...reportInspection(find, book),
    value: null,
    courses: [],
    decision: {
      course: "leave",
      lookFirst: null,
      stop: stop.caution,
      reasons: [stop.reason],
      walkAwayPrice: null,
      breakEvenSalePrice: null,
      confidence: null,
      perfectInformation: null,
      goalsAtWhichItFlips: [],
      courseByGoal: [],
    },
    nextChecks: [],
    lookingOn: null,
    sensitivity: [],
    soFar: soFar(settled),
    cautions: cautionsFor(settled, inspection, [], book),
  };
}

function head({ currency, unconverted }: SettledRequest) {
  return { currency, demoData: true, unconverted } as const;
}

function soFar({ soFar: { minutes, ...rest } }: SettledRequest): Appraisal["soFar"] {
  return { ...rest, hours: minutes / 60 };
}
