import type { Probability } from "../quantity.ts";

/** What is believed once something was observed, and how likely it was to be observed. */
export interface Updated {
  /** Chance of the observation. */
  readonly chance: Probability;
  /** Chances of the states after it, summing to 1; as they were where it cannot be. */
  readonly weights: Float64Array;
}

/**
 * Bayes's rule over states: P(z | seen) = P(z) P(seen | z) / P(seen).
 * @param weights P(z), summing to 1
 * @param likelihoods P(seen | z), in the same order
 */
export function updated(weights: Float64Array, likelihoods: ArrayLike<number>): Updated {
  const after = new Float64Array(weights.length);
  let chance = 0;
  for (let z = 0; z < after.length; z++) {
    after[z] = weights[z]! * likelihoods[z]!;
    chance += after[z]!;
  }
  if (!(chance > 0)) return { chance: 0, weights };
  for (let z = 0; z < after.length; z++) after[z]! /= chance;
  return { chance, weights: after };
}
