import type { Money } from "../quantity.ts";
import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { cautionsFor } from "./cautions.ts";
import { bestCourse, breakEvenSalePrice, walkAwayPrice } from "./choice.ts";
import { reportInspection } from "./inspectFind.ts";
import { lookFirst } from "./lookFirst.ts";
import { lookingAt } from "./looking/looking.ts";
import { lookingOn } from "./looking/lookingOn.ts";
import type { NextCheck } from "./looking/nextCheck.ts";
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
  const find = weighFind(request, book);
  if (find.stop) return { ...reportFind(find, book), lookingOn: null };
  const looking = lookingAt(find, bestCourse(find.courses, find.situation));
  const looks = nextChecks(looking, book);
  return { ...reportFind(find, book, looks), lookingOn: lookingOn(looking, looks, book) };
}

/** What is told of a find among others: all but whether to look on, which nothing else hangs on. */
export type Report = Omit<Appraisal, "lookingOn">;

/**
 * The answer for a find that was weighed.
 * @param looks what may be looked at next, worked out where it is not given
 */
export function reportFind(weighed: WeighedFind, book: Book, looks?: readonly NextCheck[]): Report {
  return weighed.stop ? stopped(weighed, book) : decided(weighed, book, looks);
}

function decided(find: OpenFind, book: Book, given?: readonly NextCheck[]): Report {
  const { settled, inspection, situation, courses } = find;
  const best = bestCourse(courses, situation);
  const { sensitivity, perfectInformation, ...sureness } = trustIn(best, courses, situation);
  const looks = given ?? nextChecks(lookingAt(find, best), book);
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
      perfectInformation: atLeast(looks, perfectInformation),
    },
    nextChecks: looks,
    sensitivity,
    soFar: soFar(settled),
    cautions: cautionsFor(settled, inspection, courses, book),
  };
}

/** Knowing everything, which scenarios sample, is worth at least what the best single look is: that may turn on a fault too rare for them. */
function atLeast(looks: readonly NextCheck[], perfectInformation: Money | null): Money | null {
  if (perfectInformation === null) return null;
  return looks.reduce((most, { sampleInformation }) => Math.max(most, sampleInformation), perfectInformation);
}

/** No money figure is given: do not pay, do not bargain. */
function stopped(find: StoppedFind, book: Book): Report {
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
