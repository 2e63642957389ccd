import type { Situation } from "../../../worker/engine/decision/situation.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { givenOf } from "./given.ts";
import { AsFoundWalk, PartsWalk } from "./plainWalks.ts";
import { playbookOf } from "./playbook.ts";
import { RideableWalk } from "./rideableWalk.ts";
import type { Fitness } from "./stall.ts";

export interface Played {
  readonly margins: Float64Array;
  readonly hours: Float64Array;
}

/** Plays a course so many times, bike by bike. */
export function playCourse(
  course: OpenCourse,
  situation: Situation,
  count: number,
  seed: number,
  fitness: Fitness = "by chance",
): Played {
  const given = givenOf(situation);
  const book = playbookOf(course, situation);
  const Kind =
    course.course === "sell-as-found"
      ? AsFoundWalk
      : course.course === "break-for-parts"
        ? PartsWalk
        : RideableWalk;
  const walk = new Kind(given, book, seed, fitness);
  const margins = new Float64Array(count);
  const hours = new Float64Array(count);
  for (let bike = 0; bike < count; bike++) {
    walk.next();
    margins[bike] = walk.margin;
    hours[bike] = walk.hours;
  }
  return { margins, hours };
}
