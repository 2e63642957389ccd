import type { ThreePoint } from "../quantity.ts";
import { exp } from "./elementary/exp.ts";
import { log, log1p } from "./elementary/log.ts";
import { squared } from "./elementary/powers.ts";
import { incompleteBeta, logBetaFunction } from "./incompleteBeta.ts";
import { pertMean } from "./pert.ts";
import type { LocalDistribution } from "./risingQuantiles.ts";

/** X = low + width x B, B beta(a, b) with a, b and width above 0. */
export interface ScaledBeta {
  readonly low: number;
  readonly width: number;
  readonly a: number;
  readonly b: number;
  readonly logBeta: number;
}

/**
 * A three-point estimate as the beta on its range that has the rule's mean (a + 4m + b) / 6 and standard deviation (b - a) / 6.
 * @returns null where nothing varies
 * Source of mean and deviation: Malcolm, Roseboom, Clark & Fazar 1959.
 */
export function threePointBeta(estimate: ThreePoint): ScaledBeta | null {
  const { optimistic: low, pessimistic } = estimate;
  const width = pessimistic - low;
  if (width === 0) return null;
  const mean = (pertMean(estimate) - low) / width;
  // A beta of variance 1/36: mean (1 - mean) / (a + b + 1).
  const total = 36 * mean * (1 - mean) - 1;
  const [a, b] = [mean * total, (1 - mean) * total];
  return { low, width, a, b, logBeta: logBetaFunction(a, b) };
}

/** So many times a quantity, moved. */
export function timesAndMoved(beta: ScaledBeta, factor: number, by: number): ScaledBeta {
  return { ...beta, low: factor * beta.low + by, width: factor * beta.width };
}

/** E[X]. */
export function scaledBetaMean({ low, width, a, b }: ScaledBeta): number {
  return low + (width * a) / (a + b);
}

/** Var(X). */
export function scaledBetaVariance({ width, a, b }: ScaledBeta): number {
  return (squared(width) * a * b) / (squared(a + b) * (a + b + 1));
}

/** Chance of at most x, density and its slope. */
export function scaledBetaAt({ low, width, a, b, logBeta }: ScaledBeta, x: number): LocalDistribution {
  const at = (x - low) / width;
  if (at <= 0) return { below: 0, density: 0, slope: 0 };
  if (at >= 1) return { below: 1, density: 0, slope: 0 };
  const density = exp((a - 1) * log(at) + (b - 1) * log1p(-at) - logBeta) / width;
  return {
    below: incompleteBeta(at, a, b, 1 - at, logBeta),
    density,
    slope: (density * ((a - 1) / at - (b - 1) / (1 - at))) / width,
  };
}
