import type { ThreePoint } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { pertMean, pertSd } from "../statistics/pert.ts";

/** Mean and variance of a quantity, in its unit and its unit squared. Independent quantities add in both. */
export interface Moments {
  readonly mean: number;
  readonly variance: number;
}

export const NOTHING: Moments = { mean: 0, variance: 0 };

export function sum(...terms: readonly Moments[]): Moments {
  let mean = 0;
  let variance = 0;
  for (const term of terms) {
    mean += term.mean;
    variance += term.variance;
  }
  return { mean, variance };
}

/** Sum of a quantity of each of some things. */
export function sumOver<Item>(items: readonly Item[], of: (item: Item) => Moments): Moments {
  let mean = 0;
  let variance = 0;
  for (const item of items) {
    const term = of(item);
    mean += term.mean;
    variance += term.variance;
  }
  return { mean, variance };
}

export function times(moments: Moments, factor: number): Moments {
  return { mean: moments.mean * factor, variance: moments.variance * factor * factor };
}

/**
 * A cost that comes with a chance p: mean p m, variance p v + p (1 - p) m^2 (law of total variance).
 * @param chance 0 to 1
 */
export function withChance(moments: Moments, chance: number): Moments {
  return {
    mean: chance * moments.mean,
    variance: chance * moments.variance + chance * (1 - chance) * squared(moments.mean),
  };
}

/** Moments of a three-point estimate by the PERT rule. */
export function threePointMoments(estimate: ThreePoint): Moments {
  return { mean: pertMean(estimate), variance: squared(pertSd(estimate)) };
}
