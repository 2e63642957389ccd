import type { UnseenCheck } from "../../inspection/finding.ts";
import type { Probability } from "../../quantity.ts";
import type { Book } from "../book.ts";
import { bestCourse } from "../choice.ts";
import { situationOf } from "../situation.ts";
import { stopOf } from "../stop.ts";
import { weighCourses } from "../weigh.ts";
import type { OpenFind } from "../weighFind.ts";
import type { LevelOutlook } from "./levelOutlook.ts";
import { levelsEntered } from "./levelsEntered.ts";

/** The outlook as the whole engine has it, were the levels entered: chances, plans and prices made anew. */
export function weighedAgain(
  find: OpenFind,
  checks: readonly UnseenCheck[],
  ranks: readonly number[],
  chance: Probability,
  book: Book,
): LevelOutlook {
  const { settled, inspection } = levelsEntered(find, checks, ranks, book);
  if (stopOf(settled, inspection, book)) return stoppedThen(find, chance);
  const situation = situationOf(settled, inspection, book);
  const courses = weighCourses(situation);
  return {
    chance,
    worths: courses.map((course) => (course.open ? course.expected.netBenefit : null)),
    course: bestCourse(courses, situation).course,
    stop: false,
    instead: situation.change.worth,
  };
}

/** Nobody pays, nobody bargains: what leaving is worth now. */
export function stoppedThen({ courses }: OpenFind, chance: number): LevelOutlook {
  return {
    chance,
    worths: courses.map((one) => (one.open && one.course === "leave" ? one.expected.netBenefit : null)),
    course: "leave",
    stop: true,
    instead: 0,
  };
}
