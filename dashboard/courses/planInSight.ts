import type { Appraisal, CourseId, CourseOutcome } from "../api/types.ts";
import { bestOther } from "./standing.ts";

/** Courses with work to show. */
export function plannedCourses({ courses }: Pick<Appraisal, "courses">): readonly CourseOutcome[] {
  return courses.filter(({ plan }) => plan !== null && plan.operations.length > 0);
}

/** The course whose plan is shown: the one picked, else the one decided, else the best other; undefined where none has work. */
export function planInSight(
  appraisal: Pick<Appraisal, "courses" | "decision">,
  picked: CourseId | null,
): CourseOutcome | undefined {
  const planned = plannedCourses(appraisal);
  return (
    planned.find((one) => one.course === picked) ??
    planned.find((one) => one.course === appraisal.decision.course) ??
    planned.find((one) => one.course === bestOther(appraisal.courses)?.course) ??
    planned[0]
  );
}
