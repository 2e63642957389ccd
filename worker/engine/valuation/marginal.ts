import type { Probability } from "../quantity.ts";

/** One level that an unknown may have: its chance, and what it writes into the row (column, value, column, value, ...). */
export interface Outcome {
  readonly chance: Probability;
  readonly entries: readonly number[];
}

/** Adds the mean row of an unknown to x, and returns mean and variance of its effect under given coefficients. */
export function addMarginal(
  x: Float64Array,
  coefficients: Float64Array,
  outcomes: readonly Outcome[],
  weight: Probability,
): { readonly mean: number; readonly variance: number } {
  let [mean, square] = [0, 0];
  for (const { chance, entries } of outcomes) {
    let effect = 0;
    for (let at = 0; at < entries.length; at += 2) {
      const column = entries[at]!;
      if (column < 0) continue;
      x[column]! += weight * chance * entries[at + 1]!;
      effect += coefficients[column]! * entries[at + 1]!;
    }
    mean += chance * effect;
    square += chance * effect * effect;
  }
  return { mean, variance: Math.max(0, square - mean * mean) };
}

/** The outcomes of an attribute: the known level alone, or every level by its share. */
export function outcomesOf<Level extends string>(
  known: Level | undefined,
  shares: Readonly<Record<Level, Probability>>,
  entries: (level: Level) => readonly number[],
): readonly Outcome[] {
  if (known !== undefined) return [{ chance: 1, entries: entries(known) }];
  return (Object.keys(shares) as Level[]).map((level) => ({
    chance: shares[level],
    entries: entries(level),
  }));
}
