import type { Money } from "../../quantity.ts";
import type { CourseId } from "../../service/operation.ts";
import { costOf, stillAhead } from "../courseBranch.ts";
import type { Situation } from "../situation.ts";
import type { OpenCourse } from "../weighedCourse.ts";
import { soldRiding } from "./soldRiding.ts";

/** The course decided on now, as whoever begins it without a look has it. */
export interface Begun {
  readonly course: CourseId;
  /** What is paid and done before a fault shows, and lost where the course is changed then; null where nothing shows on the way. */
  readonly lost: Money | null;
  /** What does not ride, sold as found; null for another course. */
  readonly notRiding: Money | null;
  /** Purchase and travel that lie ahead, minutes at the goal. */
  readonly ahead: Money;
}

export function begunNow(now: OpenCourse, situation: Situation): Begun {
  const { settled } = situation;
  const { money, minutes } = stillAhead(situation);
  const ahead = money + (minutes * settled.workshop.hourlyGoal) / 60;
  return {
    course: now.course,
    lost: now.unknown ? costOf(now.unknown.opening, settled) + ahead - settled.reuseWorth : null,
    notRiding: now.course === "sell-as-found" ? soldRiding(now, 0, situation) : null,
    ahead,
  };
}
