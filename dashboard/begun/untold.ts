import type { Appraisal, Reference } from "../api/types.ts";

/** Work that is done and whose result nobody told: a test or a query, and a check at which its result is answered. */
export interface Untold {
  readonly operation: string;
  readonly check: string;
}

/**
 * Tests and queries that are ticked as done while what they were to settle stands as before: of a test it is known that it
 * is done, not what it showed. They are asked at the checks that stand at a level they settle; where none of their checks
 * was answered at all, at those owed.
 * @param done ids of the work that is finished
 */
export function untoldResults(
  { operations }: Pick<Reference, "operations">,
  done: readonly string[],
  { findings, readiness }: Pick<Appraisal, "findings" | "readiness">,
): readonly Untold[] {
  const stands = (of: string, at: readonly string[]) =>
    findings.some(({ check, level, curedBy }) => check === of && at.includes(level) && curedBy.length === 0);
  return operations
    .filter(({ id }) => done.includes(id))
    .flatMap(({ id, settles }) => {
      const standing = settles.filter(({ check, levels }) => stands(check, levels));
      const isAnswered = settles.some(({ check }) => findings.some((finding) => finding.check === check));
      const owed = isAnswered ? [] : settles.filter(({ check }) => readiness.owed.includes(check));
      return [...standing, ...owed].map(({ check }) => ({ operation: id, check }));
    });
}
