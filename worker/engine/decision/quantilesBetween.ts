import type { Probability } from "../quantity.ts";
import { type Invertible, risingQuantiles } from "../statistics/risingQuantiles.ts";

/** A Newton step shorter than this, in money or minutes, has landed to many more digits than any figure that is shown. */
export const TOLERANCE = 1e-3;

/** Quantiles at rising probabilities of a distribution that jumps at some points and is smooth between them. */
export function quantilesBetween(
  jumps: readonly number[],
  { at, low, high, guess = (low + high) / 2 }: Invertible,
  rising: readonly Probability[],
): number[] {
  if (jumps.length === 0) return risingQuantiles({ at, low, high, guess }, rising, TOLERANCE);
  const found: number[] = [];
  const upTo = (chance: Probability) => rising.slice(found.length).filter((p) => p <= chance);
  let from = low;
  for (const jump of jumps.filter((one) => one > low && one < high)) {
    const before = jump - TOLERANCE;
    if (before > from)
      found.push(
        ...risingQuantiles({ at, low: from, high: before, guess }, upTo(at(before).below), TOLERANCE),
      );
    found.push(...upTo(at(jump).below).map(() => jump));
    from = jump;
  }
  return [
    ...found,
    ...risingQuantiles({ at, low: from, high, guess }, rising.slice(found.length), TOLERANCE),
  ];
}
