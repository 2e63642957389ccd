import type { RankedModifier } from "./inspectionIndex.ts";

/**
 * Chances after modifiers: each multiplies the odds of its set of levels (fromRank and worse) and keeps the proportions
 * inside the set and outside it. Multiplying the set's chances and dividing by the new sum does exactly that, and the
 * order of the modifiers does not matter.
 * @param prior chances of the levels, summing to 1
 * @returns chances summing to 1
 */
export function modified(
  prior: readonly number[],
  modifiers: readonly Pick<RankedModifier, "fromRank" | "odds">[],
): readonly number[] {
  if (modifiers.length === 0) return prior;
  const weights = prior.map((chance, rank) =>
    modifiers.reduce((weight, { fromRank, odds }) => (rank >= fromRank ? weight * odds : weight), chance),
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}
