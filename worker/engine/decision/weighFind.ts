import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { type LookedOver, lookOver } from "./lookOver.ts";
import { settleRequest } from "./settledRequest.ts";
import { type Situation, situationOf } from "./situation.ts";
import { type Stop, stopOf } from "./stop.ts";
import { weighCourses } from "./weigh.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/** Something ends the matter before money is compared. */
export interface StoppedFind extends LookedOver {
  readonly stop: Stop;
}

export interface OpenFind extends LookedOver {
  readonly stop: null;
  readonly situation: Situation;
  /** The five, in their fixed order. */
  readonly courses: readonly WeighedCourse[];
}

/** One find worked out, before anything is told of it. */
export type WeighedFind = StoppedFind | OpenFind;

/**
 * Looks a find over, asks what stops it, and else weighs its courses.
 * @throws DomainError with an RFC 6901 pointer into the request
 */
export function weighFind(request: AppraisalRequest, book: Book): WeighedFind {
  const looked = lookOver(settleRequest(request, book), book);
  const { settled, inspection } = looked;
  const stop = stopOf(settled, inspection, book);
  if (stop) return { ...looked, stop };
  const situation = situationOf(settled, inspection, book);
  return { ...looked, stop, situation, courses: weighCourses(situation) };
}
