import { DomainError } from "../domainError.ts";
import { exp } from "./elementary/exp.ts";
import { expm1 } from "./elementary/expm1.ts";
import { log, log1p } from "./elementary/log.ts";
import { squared } from "./elementary/powers.ts";
import { normalCdf, normalDensity, normalQuantile } from "./standardNormal.ts";

/** A quantity whose logarithm is normal. Median exp(logMedian); logSd 0 is a fixed number. */
export interface LogNormal {
  readonly logMedian: number;
  readonly logSd: number;
}

/**
 * From mean and standard deviation of the quantity itself: logSd^2 = ln(1 + (sd/mean)^2), median = mean / sqrt(1 + (sd/mean)^2).
 * @throws DomainError unless mean > 0 and sd >= 0
 */
export function logNormalFromMean(mean: number, sd: number): LogNormal {
  if (!(mean > 0)) throw new DomainError("out-of-domain", "mean", mean, "a number above 0");
  if (!(sd >= 0)) throw new DomainError("out-of-domain", "sd", sd, "a number of at least 0");
  const logVariance = log1p(squared(sd / mean));
  return { logMedian: log(mean) - logVariance / 2, logSd: Math.sqrt(logVariance) };
}

/**
 * From the median of the quantity and the standard deviation of its logarithm.
 * @throws DomainError unless median > 0 and logSd >= 0
 */
export function logNormalFromMedian(median: number, logSd: number): LogNormal {
  if (!(median > 0)) throw new DomainError("out-of-domain", "median", median, "a number above 0");
  if (!(logSd >= 0)) throw new DomainError("out-of-domain", "logSd", logSd, "a number of at least 0");
  return { logMedian: log(median), logSd };
}

/** Mean: exp(logMedian + logSd^2 / 2). */
export function logNormalMean({ logMedian, logSd }: LogNormal): number {
  return exp(logMedian + (logSd * logSd) / 2);
}

/** Standard deviation of the quantity: mean x sqrt(exp(logSd^2) - 1). */
export function logNormalSd(distribution: LogNormal): number {
  return logNormalMean(distribution) * Math.sqrt(expm1(squared(distribution.logSd)));
}

/**
 * Chance that the quantity stays at or below x.
 * @param logX log of x, where it is at hand
 */
export function logNormalCdf({ logMedian, logSd }: LogNormal, x: number, logX = log(x)): number {
  if (x <= 0) return 0;
  const distance = logX - logMedian;
  if (logSd === 0) return distance < 0 ? 0 : 1;
  return normalCdf(distance / logSd);
}

/**
 * Density at x; 0 for x <= 0. Needs logSd > 0.
 * @param logX log of x, where it is at hand
 */
export function logNormalDensity({ logMedian, logSd }: LogNormal, x: number, logX = log(x)): number {
  return x <= 0 ? 0 : normalDensity((logX - logMedian) / logSd) / (logSd * x);
}

/**
 * The value that the quantity stays below with the given probability.
 * @throws DomainError outside 0 to 1
 */
export function logNormalQuantile({ logMedian, logSd }: LogNormal, probability: number): number {
  if (logSd === 0) return exp(logMedian);
  return exp(logMedian + logSd * normalQuantile(probability));
}
