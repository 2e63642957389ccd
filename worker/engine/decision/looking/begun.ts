import type { Money } from "../../quantity.ts";
import { costOf, stillAhead } from "../courseBranch.ts";
import type { Situation } from "../situation.ts";
import type { WeighedCourse } from "../weighedCourse.ts";
import { soldRiding } from "./soldRiding.ts";

/** What courses cost whoever begins them without a look; by course, in their fixed order. */
export interface Begun {
  readonly open: readonly boolean[];
  /** What is paid and done before a fault shows, and lost where the course is changed then; null where nothing shows on the way. */
  readonly lost: readonly (Money | null)[];
  /** Selling as found what does not ride. */
  readonly notRiding: Money | null;
  /** Purchase and travel that lie ahead, minutes at the goal. */
  readonly ahead: Money;
}

export function begunWithout(courses: readonly WeighedCourse[], situation: Situation): Begun {
  const { settled } = situation;
  const { money, minutes } = stillAhead(situation);
  const ahead = money + (minutes * settled.workshop.hourlyGoal) / 60;
  const asFound = courses.find(({ course }) => course === "sell-as-found");
  return {
    open: courses.map(({ open }) => open),
    lost: courses.map((course) =>
      course.open && course.unknown
        ? costOf(course.unknown.opening, settled) + ahead - settled.reuseWorth
        : null,
    ),
    notRiding: asFound?.open ? soldRiding(asFound, 0, situation) : null,
    ahead,
  };
}
