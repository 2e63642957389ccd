import type { LogNormal } from "../statistics/logNormal.ts";
import type { LocalDistribution } from "../statistics/risingQuantiles.ts";
import { studentTCdf, studentTDensity, studentTLogBeta, studentTQuantile } from "../statistics/studentT.ts";

/** Student's t by what a band asks of it: worked out once for all bands of a find. */
export interface Tails {
  readonly degreesOfFreedom: number;
  readonly logBeta: number;
  /** 75 and 90 % points of t. */
  readonly p75: number;
  readonly p90: number;
}

/**
 * A going rate, before haggling, fee and post. Its log is Student's t (location logMedian, scale logScale): bands take their quantiles from it.
 * The exponential of a t has no mean, so whatever asks for means takes the log-normal of the same location and variance:
 * logSd^2 = logScale^2 v / (v - 2).
 */
export interface GoingRate extends LogNormal {
  readonly logScale: number;
  readonly tails: Tails;
}

/** @param degreesOfFreedom above 2, so that the variance is finite */
export function tailsOf(degreesOfFreedom: number): Tails {
  return {
    degreesOfFreedom,
    logBeta: studentTLogBeta(degreesOfFreedom),
    p75: studentTQuantile(0.75, degreesOfFreedom),
    p90: studentTQuantile(0.9, degreesOfFreedom),
  };
}

/** Standard deviation of the log over its scale: sqrt(v / (v - 2)). */
export function spreadOfTails({ degreesOfFreedom }: Tails): number {
  return Math.sqrt(degreesOfFreedom / (degreesOfFreedom - 2));
}

/** Chance that the log of the going rate stays at or below a point, with density and slope there. */
export function goingRateAt({ logMedian, logScale, tails }: GoingRate, logPrice: number): LocalDistribution {
  const { degreesOfFreedom, logBeta } = tails;
  const t = (logPrice - logMedian) / logScale;
  const density = studentTDensity(t, degreesOfFreedom, logBeta) / logScale;
  return {
    below: studentTCdf(t, degreesOfFreedom, logBeta),
    density,
    // The log of the density of t has the slope -(v + 1) t / (v + t^2).
    slope: (-density * (degreesOfFreedom + 1) * t) / ((degreesOfFreedom + t * t) * logScale),
  };
}
