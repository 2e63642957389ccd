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
}

export function lookingAt(find: OpenFind, now: OpenCourse): Looking {
  const { situation } = find;
  return {
    find,
    now,
    begun: begunNow(now, situation),
    outlookOf: findOutlook(find),
  };
}
