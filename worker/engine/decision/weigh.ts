import { COURSES, type CourseId } from "../service/operation.ts";
import type { Situation } from "./situation.ts";
import { weighAsFound } from "./weighAsFound.ts";
import type { WeighedCourse } from "./weighedCourse.ts";
import { weighLeave } from "./weighLeave.ts";
import { weighParts } from "./weighParts.ts";
import { weighRideable } from "./weighRideable.ts";

const WEIGH: Readonly<Record<CourseId, (situation: Situation) => WeighedCourse>> = {
  restore: (situation) => weighRideable("restore", situation),
  "make-safe": (situation) => weighRideable("make-safe", situation),
  "sell-as-found": weighAsFound,
  "break-for-parts": weighParts,
  leave: weighLeave,
};

/** Works out the five courses, in their fixed order. */
export function weighCourses(situation: Situation): readonly WeighedCourse[] {
  return COURSES.map((course) => WEIGH[course](situation));
}
