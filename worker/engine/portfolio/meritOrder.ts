import type { Candidate, CandidateOption } from "./candidate.ts";
import type { MeritEntry } from "./comparison.ts";
import { isLeft, type Taken } from "./taken.ts";

/**
 * Finds by expected margin per expected hour, highest first: each in the course it was given, else in the one of the highest worth beside leaving. A find
 * that can only be left is not in it. Finds of equal rate keep their order.
 */
export function meritOrder(
  settled: readonly (Taken | { readonly candidate: Candidate; readonly option: null })[],
): readonly MeritEntry[] {
  const entries = settled.flatMap(({ candidate, option }): MeritEntry[] => {
    const chosen = option !== null && !isLeft(option);
    const shown = chosen ? option : worthiestOf(candidate);
    if (shown === null) return [];
    const { course, expected } = shown.course;
    const marginPerHour = expected.margin / expected.hours;
    return [{ id: candidate.id, course, hours: expected.hours, marginPerHour, chosen }];
  });
  return entries.toSorted((a, b) => b.marginPerHour - a.marginPerHour);
}

function worthiestOf({ options }: Candidate): CandidateOption | null {
  const courses = options.filter((option) => !isLeft(option));
  if (courses.length === 0) return null;
  return courses.reduce((best, option) => (option.value > best.value ? option : best));
}
