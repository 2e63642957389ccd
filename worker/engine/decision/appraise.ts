import type { Inspection } from "../inspection/finding.ts";
import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { cautionsFor } from "./cautions.ts";
import { bestCourse, breakEvenSalePrice, walkAwayPrice } from "./choice.ts";
import { inspectSettled, reportInspection } from "./inspectFind.ts";
import { lookFirst } from "./lookFirst.ts";
import { reasonsFor } from "./reasons.ts";
import { reportCourses } from "./reportedCourse.ts";
import { type SettledRequest, settleRequest } from "./settledRequest.ts";
import { situationOf } from "./situation.ts";
import { stateValues } from "./stateValues.ts";
import { type Stop, stopOf } from "./stop.ts";
import { weighCourses } from "./weigh.ts";

/**
 * The whole answer for one find: findings, value by state, the five courses with their outcome, the decision, readiness, cautions. First what stops the
 * matter, then what closes courses, then money: net benefit at the user's goal, compared at the margin.
 * Deterministic: the same request and book give the same answer, byte for byte.
 * @throws DomainError with an RFC 6901 pointer into the request
 */
export function appraise(request: AppraisalRequest, book: Book): Appraisal {
  const settled = settleRequest(request, book);
  const inspection = inspectSettled(settled, book);
  const stop = stopOf(settled, inspection, book);
  return stop ? stopped(stop, settled, inspection, book) : decided(settled, inspection, book);
}

function decided(settled: SettledRequest, inspection: Inspection, book: Book): Appraisal {
  const situation = situationOf(settled, inspection, book);
  const courses = weighCourses(situation);
  const best = bestCourse(courses, situation);
  const look = lookFirst(settled, inspection, book, situation, best.expected.netBenefit);
  return {
    ...head(settled),
    ...reportInspection(settled, inspection, book),
    value: stateValues(situation, courses),
    courses: reportCourses(courses, settled, book),
    decision: {
      course: best.course,
      lookFirst: look?.operation ?? null,
      stop: null,
      reasons: reasonsFor(best, courses, situation, look),
      walkAwayPrice: walkAwayPrice(courses, situation),
      breakEvenSalePrice: breakEvenSalePrice(best, situation),
    },
    soFar: soFar(settled),
    cautions: cautionsFor(settled, inspection, courses, book),
  };
}

/** No money figure is given: do not pay, do not bargain. */
function stopped(
  { caution, reason }: Stop,
  settled: SettledRequest,
  inspection: Inspection,
  book: Book,
): Appraisal {
  return {
    ...head(settled),
    ...reportInspection(settled, inspection, book),
    value: null,
    courses: [],
    decision: {
      course: "leave",
      lookFirst: null,
      stop: caution,
      reasons: [reason],
      walkAwayPrice: null,
      breakEvenSalePrice: null,
    },
    soFar: soFar(settled),
    cautions: cautionsFor(settled, inspection, [], book),
  };
}

function head({ currency, unconverted }: SettledRequest) {
  return { currency, demoData: true, unconverted } as const;
}

function soFar({ soFar: { money, minutes } }: SettledRequest): Appraisal["soFar"] {
  return { money, hours: minutes / 60 };
}
