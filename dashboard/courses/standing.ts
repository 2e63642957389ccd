import type { Appraisal, CourseOutcome } from "../api/types.ts";

/** How a find stands: the course decided on, and the course whose figures are shown for it. */
export interface Standing {
  readonly verdict: CourseOutcome;
  /** The verdict itself or, where that is to leave, the best of the others; null where no other is open. */
  readonly shown: CourseOutcome | null;
}

/** Null where a caution stops everything: then there is no figure. */
export function standing(appraisal: Pick<Appraisal, "courses" | "decision">): Standing | null {
  if (appraisal.decision.stop !== null) return null;
  const verdict = appraisal.courses.find(({ course }) => course === appraisal.decision.course);
  if (verdict === undefined) return null;
  return { verdict, shown: verdict.course === "leave" ? bestOther(appraisal.courses) : verdict };
}

/** The open course other than leave with the highest net benefit. */
export function bestOther(courses: readonly CourseOutcome[]): CourseOutcome | null {
  const open = courses.filter(({ course, available }) => course !== "leave" && available);
  return open.reduce<CourseOutcome | null>(
    (best, one) => (best === null || (one.netBenefit ?? 0) > (best.netBenefit ?? 0) ? one : best),
    null,
  );
}

/** Fewer than half of the checks that apply were made. */
export function hardlyLooked({ looked }: Pick<Appraisal, "looked">): boolean {
  return looked.made * 2 < looked.applicable;
}
