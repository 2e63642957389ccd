import type { UnseenCheck } from "../../inspection/finding.ts";
import type { Book } from "../book.ts";
import { bestCourse } from "../choice.ts";
import { situationOf } from "../situation.ts";
import { stopOf } from "../stop.ts";
import { weighCourses } from "../weigh.ts";
import type { OpenFind } from "../weighFind.ts";
import { levelEntered } from "./levelEntered.ts";
import type { LevelOutlook } from "./levelOutlook.ts";

/** The outlook as the whole engine has it, were the level entered: chances, plans and prices made anew. */
export function weighedAgain(find: OpenFind, unseen: UnseenCheck, rank: number, book: Book): LevelOutlook {
  const chance = unseen.probabilities[rank]!;
  const { settled, inspection } = levelEntered(find, unseen, rank, book);
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
