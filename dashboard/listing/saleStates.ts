import type { Appraisal, CourseId, CourseOutcome } from "../api/types.ts";

/** The state a bike is advertised in. */
export type SaleState = "asFound" | "madeSafe" | "restored" | "parts";

/** The course whose plan leads to each state, in the order in which they are offered. */
export const COURSE_OF: Readonly<Record<SaleState, CourseId>> = {
  asFound: "sell-as-found",
  madeSafe: "make-safe",
  restored: "restore",
  parts: "break-for-parts",
};

/** The states whose course is open; none where the find is stopped. */
export function offeredStates({ decision, courses }: Appraisal): readonly SaleState[] {
  if (decision.stop !== null) return [];
  return (Object.keys(COURSE_OF) as SaleState[]).filter((state) => courseOf(state, courses)?.available);
}

/** The state of the decided course; where that is none to sell in, the first that is open. Null where none is. */
export function defaultState(answer: Appraisal): SaleState | null {
  const offered = offeredStates(answer);
  return offered.find((state) => COURSE_OF[state] === answer.decision.course) ?? offered[0] ?? null;
}

/** The course that leads to a state. */
export function courseOf(state: SaleState, courses: readonly CourseOutcome[]): CourseOutcome | undefined {
  return courses.find(({ course }) => course === COURSE_OF[state]);
}

/** Whether a state is reached by curing what blocks riding. */
export function isRideable(state: SaleState): boolean {
  return state === "madeSafe" || state === "restored";
}
