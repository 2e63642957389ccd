import { DomainError } from "../../domainError.ts";
import type { Money, Probability } from "../../quantity.ts";
import { log } from "../../statistics/elementary/log.ts";
import type { LogNormal } from "../../statistics/logNormal.ts";
import { normalDensity, normalQuantile } from "../../statistics/standardNormal.ts";

/** What is believed of a going rate, as weighted points of its logarithm. */
export interface GoingRates {
  readonly logRates: Float64Array;
  /** Sum to 1. */
  readonly weights: Float64Array;
}

/**
 * A log going rate by the score of a standard normal. Below the median and above it the logarithm may spread differently: what a band with
 * unequal sides says.
 */
export interface RateCurve {
  /** Chance that the going rate follows this curve. */
  readonly chance: Probability;
  readonly logMedian: number;
  readonly logSdBelow: number;
  readonly logSdAbove: number;
}

/** 10, 50 and 90 % points of a going rate. */
export interface RateBand {
  readonly p10: Money;
  readonly p50: Money;
  readonly p90: Money;
}

const TENTH_FROM_TOP = normalQuantile(0.9);

/**
 * The going rate that a band describes: log-normal on each side of its median, through its three points.
 * @throws DomainError unless 0 < p10 <= p50 <= p90
 */
export function curveOfBand({ p10, p50, p90 }: RateBand): RateCurve {
  if (!(p10 > 0)) throw new DomainError("out-of-domain", "p10", p10, "a price above 0", "/value/p10");
  if (!(p10 <= p50)) throw new DomainError("out-of-domain", "p50", p50, "at least p10", "/value/p50");
  if (!(p50 <= p90)) throw new DomainError("out-of-domain", "p90", p90, "at least p50", "/value/p90");
  return {
    chance: 1,
    logMedian: log(p50),
    logSdBelow: log(p50 / p10) / TENTH_FROM_TOP,
    logSdAbove: log(p90 / p50) / TENTH_FROM_TOP,
  };
}

/** A log-normal going rate, with the chance that it is the one. */
export function curveOf({ logMedian, logSd }: LogNormal, chance: Probability): RateCurve {
  return { chance, logMedian, logSdBelow: logSd, logSdAbove: logSd };
}

/** Log going rate at a normal score. */
export function logRateAt({ logMedian, logSdBelow, logSdAbove }: RateCurve, score: number): number {
  return logMedian + score * (score < 0 ? logSdBelow : logSdAbove);
}

/** Scores beyond it, 1 in 16,000 or of a rough answer 1 in 1,400, are left out. */
const WIDEST_SCORE = { fine: 4, rough: 3.2 };
/** Points are at most this far apart in score, and in the log rate at most this share of the spread among buyers: then what they buy joins up smoothly. */
const APART = { score: 0.65, ofWillingness: 1 };

/**
 * Quadrature nodes of a going rate that follows one of the curves: the trapezoidal rule in the normal score, which for what is smooth over a normal
 * converges faster than any power of the step.
 * @param willingnessLogSd spread among buyers: how sharply sales tell one going rate from another
 * @param fineness divides the step
 */
export function goingRates(curves: readonly RateCurve[], willingnessLogSd: number, fineness = 1): GoingRates {
  const logRates: number[] = [];
  const weights: number[] = [];
  for (const curve of curves) {
    if (curve.chance === 0) continue;
    const logSd = Math.max(curve.logSdBelow, curve.logSdAbove);
    const step = Math.min(APART.score, (APART.ofWillingness * willingnessLogSd) / logSd) / fineness;
    const widest = fineness < 1 ? WIDEST_SCORE.rough : WIDEST_SCORE.fine;
    const reach = logSd === 0 ? 0 : Math.ceil(widest / step);
    const scores = Array.from({ length: 2 * reach + 1 }, (_, at) => (at - reach) * (reach && widest / reach));
    const total = scores.reduce((sum, score) => sum + normalDensity(score), 0);
    for (const score of scores) {
      logRates.push(logRateAt(curve, score));
      weights.push((curve.chance * normalDensity(score)) / total);
    }
  }
  return { logRates: Float64Array.from(logRates), weights: Float64Array.from(weights) };
}
