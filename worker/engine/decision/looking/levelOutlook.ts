import type { Money, Probability } from "../../quantity.ts";
import { COURSES, type CourseId } from "../../service/operation.ts";
import type { Begun } from "./begun.ts";
import type { Answer } from "./sampleInformation.ts";

/** What a find would be worth, were one of its checks found at a level. */
export interface LevelOutlook {
  readonly chance: Probability;
  /** Of the five courses, in their fixed order; null where one is closed then. */
  readonly worths: readonly (Money | null)[];
  /** The course that would be chosen; leave where the matter is stopped. */
  readonly course: CourseId;
  /** The level stops the matter. */
  readonly stop: boolean;
  /** What is done instead where a course is changed then, from there on. */
  readonly instead: Money;
}

/**
 * An outlook as an answer. Whoever knows it takes the course that is chosen then. Whoever began the course decided on now meets the fault on the way and goes
 * on or changes the course, whichever is worth more, with what began it lost; sells what does not ride; or, where the matter stops, has paid for nothing.
 */
export function answerOf({ chance, worths, course, stop, instead }: LevelOutlook, begun: Begun): Answer {
  const chosen = worths[COURSES.indexOf(course)]!;
  if (stop) return { chance, chosen, kept: begun.course === "leave" ? chosen : chosen - begun.ahead };
  const worth = worths[COURSES.indexOf(begun.course)]!;
  if (begun.course === "sell-as-found") return { chance, chosen, kept: worth ?? begun.notRiding! };
  if (begun.lost === null) return { chance, chosen, kept: worth ?? chosen };
  return { chance, chosen, kept: Math.max(worth ?? Number.NEGATIVE_INFINITY, instead - begun.lost) };
}
