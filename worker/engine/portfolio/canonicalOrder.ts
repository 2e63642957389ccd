import type { Candidate, CandidateOption } from "./candidate.ts";

/**
 * The candidates in an order that does not depend on that of the request: by their figures, then by their labels. So ties are broken and sums
 * are rounded the same way however the finds are listed.
 */
export function inCanonicalOrder(candidates: readonly Candidate[]): readonly Candidate[] {
  return candidates.toSorted(
    (a, b) => byFigures(a.options, b.options) || (a.id < b.id ? -1 : Number(a.id > b.id)),
  );
}

function byFigures(a: readonly CandidateOption[], b: readonly CandidateOption[]): number {
  if (a.length !== b.length) return a.length - b.length;
  for (let i = 0; i < a.length; i++) {
    const difference = byNumbers([a[i]!.value, ...a[i]!.use], [b[i]!.value, ...b[i]!.use]);
    if (difference !== 0) return difference;
  }
  return 0;
}

function byNumbers(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
}
