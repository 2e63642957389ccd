import { DomainError } from "../domainError.ts";
import type { ThreePoint } from "../quantity.ts";
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

/** Third and fourth cumulant, in the cube and the fourth power of the amount's unit; those of independent amounts add. */
export interface HighCumulants {
  readonly third: number;
  readonly fourth: number;
}

/**
 * The scaled beta of given mean, variance, third and fourth cumulant, matched exactly.
 * @param variance above 0
 * @returns null where no beta has these: its excess kurtosis lies between -2 + g^2 and 1.5 g^2, g being the skewness
 * @throws DomainError unless all are finite and the variance is above 0
 * Source: Pearson's type I by moments (Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions 2 (1995), chapter 25).
 */
export function scaledBeta(
  mean: number,
  variance: number,
  { third, fourth }: HighCumulants,
): ScaledBeta | null {
  for (const [name, value] of Object.entries({ mean, third, fourth }))
    if (!Number.isFinite(value)) throw new DomainError("out-of-domain", name, value, "a finite number");
  if (!(variance > 0 && variance < Infinity))
    throw new DomainError("out-of-domain", "variance", variance, "a number above 0");
  const sd = Math.sqrt(variance);
  const skewness = third / (variance * sd);
  const square = skewness ** 2;
  const kurtosis = fourth / variance ** 2 + 3;
  const bound = 6 + 3 * square - 2 * kurtosis;
  const total = (6 * (kurtosis - square - 1)) / bound;
  if (!(bound > 0 && total > 0)) return null;
  const spread = Math.sqrt((total + 2) ** 2 * square + 16 * (total + 1));
  const lean = ((total + 2) * Math.abs(skewness)) / spread;
  const [less, more] = [(total / 2) * (1 - lean), (total / 2) * (1 + lean)];
  if (!(less > 0)) return null;
  const [a, b] = skewness > 0 ? [less, more] : [more, less];
  const width = (sd / 2) * spread;
  return { low: mean - (width * a) / total, width, a, b, logBeta: logBetaFunction(a, b) };
}

/** Chance of at most x, density and its slope. */
export function scaledBetaAt({ low, width, a, b, logBeta }: ScaledBeta, x: number): LocalDistribution {
  const at = (x - low) / width;
  if (at <= 0) return { below: 0, density: 0, slope: 0 };
  if (at >= 1) return { below: 1, density: 0, slope: 0 };
  const density = Math.exp((a - 1) * Math.log(at) + (b - 1) * Math.log1p(-at) - logBeta) / width;
  return {
    below: incompleteBeta(at, a, b, 1 - at, logBeta),
    density,
    slope: (density * ((a - 1) / at - (b - 1) / (1 - at))) / width,
  };
}

/**
 * Third and fourth cumulant of a three-point estimate, read as the beta on its range that has the rule's mean (a + 4m + b) / 6 and standard deviation
 * (b - a) / 6; both 0 where nothing varies.
 * Source of mean and deviation: Malcolm, Roseboom, Clark & Fazar 1959; of the cumulants: Johnson, Kotz & Balakrishnan as above.
 */
export function threePointCumulants(estimate: ThreePoint): HighCumulants {
  const width = estimate.pessimistic - estimate.optimistic;
  if (width === 0) return { third: 0, fourth: 0 };
  const mean = (pertMean(estimate) - estimate.optimistic) / width;
  const total = 36 * mean * (1 - mean) - 1;
  const [a, b] = [mean * total, (1 - mean) * total];
  const sd = width / 6;
  const skewness = (2 * (b - a) * Math.sqrt(total + 1)) / ((total + 2) * Math.sqrt(a * b));
  const excess =
    (6 * ((a - b) ** 2 * (total + 1) - a * b * (total + 2))) / (a * b * (total + 2) * (total + 3));
  return { third: skewness * sd ** 3, fourth: excess * sd ** 4 };
}
