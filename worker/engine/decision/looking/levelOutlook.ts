import type { Money, Probability } from "../../quantity.ts";
import { COURSES, type CourseId } from "../../service/operation.ts";
import type { Begun } from "./begun.ts";
import { type Answer, bestOf } from "./sampleInformation.ts";

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
 * An outlook as an answer: whoever knows it chooses among the worths as they are. Whoever does not meets the fault on the way, goes on or changes the course,
 * whichever is worth more, with what began it lost; sells what does not ride; or, where the matter stops, has paid for nothing.
 */
export function answerOf({ chance, worths, stop, instead }: LevelOutlook, begun: Begun): Answer {
  const walkedAway = bestOf(worths);
  const unknowing = COURSES.map((course, place): Money | null => {
    if (!begun.open[place]) return null;
    if (stop) return course === "leave" ? walkedAway : walkedAway - begun.ahead;
    const worth = worths[place]!;
    if (course === "sell-as-found") return worth ?? begun.notRiding;
    const lost = begun.lost[place]!;
    return lost === null ? worth : Math.max(worth ?? Number.NEGATIVE_INFINITY, instead - lost);
  });
  return { chance, known: worths, unknowing };
}
