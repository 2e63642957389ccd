import { DomainError } from "../domainError.ts";
import { asinh, sinh } from "./elementary/hyperbolic.ts";
import { log, log1p } from "./elementary/log.ts";
import { type LogNormal, logNormalCdf, logNormalDensity } from "./logNormal.ts";

/** X = shift + sign x Y, Y log-normal with logSd > 0. The long tail points up where sign is 1, down where it is -1. */
export interface ShiftedLogNormal extends LogNormal {
  readonly shift: number;
  readonly sign: 1 | -1;
}

/** Below this skewness the normal is nearer than what rounding leaves of a far shift; either errs by less than 1e-8 in chance. */
const LEAST_SKEWNESS = 1e-7;

/**
 * The shifted log-normal of given mean, variance and third central moment, matched exactly. Skewness g of a log-normal is x^3 + 3x with x^2 =
 * exp(logSd^2) - 1, so x = 2 sinh(asinh(|g| / 2) / 3), and sd = x E[Y]. A negative g is met by reflection.
 * @param variance at least 0, in the square of the mean's unit
 * @param thirdCentral E[(X - mean)^3]
 * @returns null where the variance or the skewness is 0: a fixed number or a normal
 * @throws DomainError unless all three are finite and the variance is at least 0
 * Source: Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions 1 (1994), chapter 14, three-parameter log-normal by moments.
 */
export function shiftedLogNormal(
  mean: number,
  variance: number,
  thirdCentral: number,
): ShiftedLogNormal | null {
  requireFinite("mean", mean);
  requireFinite("thirdCentral", thirdCentral);
  if (!(variance >= 0 && variance < Infinity))
    throw new DomainError("out-of-domain", "variance", variance, "a number of at least 0");
  const sd = Math.sqrt(variance);
  const skewness = thirdCentral / (variance * sd);
  if (variance === 0 || Math.abs(skewness) < LEAST_SKEWNESS) return null;
  const sign = skewness > 0 ? 1 : -1;
  const x = 2 * sinh(asinh(Math.abs(skewness) / 2) / 3);
  const logVariance = log1p(x * x);
  return {
    shift: mean - (sign * sd) / x,
    sign,
    logMedian: log(sd / x) - logVariance / 2,
    logSd: Math.sqrt(logVariance),
  };
}

/** Chance that X stays at or below x. */
export function shiftedLogNormalCdf(distribution: ShiftedLogNormal, x: number): number {
  const { shift, sign, logMedian, logSd } = distribution;
  const y = sign * (x - shift);
  if (sign > 0) return logNormalCdf(distribution, y);
  // P(Y >= y) by symmetry of the logarithm, so that the lower tail keeps its digits.
  return y <= 0 ? 1 : logNormalCdf({ logMedian: -logMedian, logSd }, 1 / y, -log(y));
}

/** Density at x. */
export function shiftedLogNormalDensity(distribution: ShiftedLogNormal, x: number): number {
  return logNormalDensity(distribution, distribution.sign * (x - distribution.shift));
}

function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new DomainError("out-of-domain", name, value, "a finite number");
}
