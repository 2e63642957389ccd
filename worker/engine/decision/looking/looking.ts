import type { Money } from "../../quantity.ts";
import { restoreNoise } from "../choice.ts";
import type { OpenCourse } from "../weighedCourse.ts";
import type { OpenFind } from "../weighFind.ts";
import { type Begun, begunNow } from "./begun.ts";
import { type FindOutlook, findOutlook } from "./findOutlook.ts";

/** What every look at one find is valued with. */
export interface Looking {
  readonly find: OpenFind;
  /** The course decided on. */
  readonly now: OpenCourse;
  readonly begun: Begun;
  readonly outlookOf: FindOutlook;
  /** By how much restoring must beat making safe. */
  readonly noise: Money;
}

export function lookingAt(find: OpenFind, now: OpenCourse): Looking {
  const { courses, situation } = find;
  return {
    find,
    now,
    begun: begunNow(now, situation),
    outlookOf: findOutlook(find),
    noise: restoreNoise(courses, situation),
  };
}
