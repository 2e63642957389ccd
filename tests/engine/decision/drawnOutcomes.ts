import type { Branch, Outlay } from "../../../worker/engine/decision/branch.ts";
import type { Pace } from "../../../worker/engine/decision/pace.ts";
import { workTime } from "../../../worker/engine/decision/workTime.ts";
import { logNormalMean, logNormalSd } from "../../../worker/engine/statistics/logNormal.ts";
import {
  type ScaledBeta,
  scaledBetaAt,
  scaledBetaMean,
  scaledBetaVariance,
} from "../../../worker/engine/statistics/scaledBeta.ts";
import { shiftedLogNormal } from "../../../worker/engine/statistics/shiftedLogNormal.ts";

/** Uniform numbers from 0 to 1: mulberry32, a public-domain generator of 32 bits; good enough for 10^5 draws. */
export function uniforms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export interface Drawn {
  readonly margins: Float64Array;
  readonly hours: Float64Array;
  readonly rates: Float64Array;
}

/**
 * Courses played out one by one: which branch, what it sells for, what it costs, how long it takes. Where something is sold the outlay is a shifted
 * log-normal of its three moments (normal without skewness), where nothing is, the beta of its widest price
 * beside normal others, or else a log-normal (a log-normal for the rate in any case); times are log-normal of the same mean and variance. For the rate
 * the outlay goes with the hours as far as they are correlated.
 */
export function drawOutcomes(branches: readonly Branch[], pace: Pace, count: number, seed: number): Drawn {
  const next = uniforms(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  const prepared = new Map(branches.map((branch) => [branch, preparedFor(branch, pace)]));
  const drawn = {
    margins: new Float64Array(count),
    hours: new Float64Array(count),
    rates: new Float64Array(count),
  };
  for (let i = 0; i < count; i++) {
    const branch = pick(branches, next());
    const { price, share } = branch;
    const { minutesAt, spentAt, besideAt, widestAt, slope, meanMinutes } = prepared.get(branch)!;
    const sold = price ? share * Math.exp(price.logMedian + price.logSd * normal()) : 0;
    const z = normal();
    const minutes = minutesAt(normal());
    const paid = widestAt ? widestAt(next(), normal()) : spentAt(z);
    drawn.margins[i] = sold - paid;
    drawn.hours[i] = minutes / 60;
    drawn.rates[i] = (sold - besideAt(z) - slope * (minutes - meanMinutes)) / drawn.hours[i]!;
  }
  return drawn;
}

/** An amount at a standard normal number. */
type Amount = (z: number) => number;

/** What a branch's draws have in common. */
interface Prepared {
  readonly minutesAt: Amount;
  readonly spentAt: Amount;
  /** What is spent beside that which goes with the hours. */
  readonly besideAt: Amount;
  /** At a uniform number for the widest price and a normal one for the others. */
  readonly widestAt: ((u: number, z: number) => number) | null;
  /** Money that goes with each minute beyond the mean. */
  readonly slope: number;
  readonly meanMinutes: number;
}

function preparedFor(branch: Branch, pace: Pace): Prepared {
  const { price, outlay, covariance } = branch;
  const spread = workTime(branch, pace);
  const slope = price && spread ? (pace.speedFactor * covariance) / logNormalSd(spread) ** 2 : 0;
  const explained = Math.max(0, slope * pace.speedFactor * covariance);
  return {
    minutesAt: timeOf(branch, pace),
    spentAt: spentIn(branch, outlay.variance),
    besideAt: spentIn(branch, outlay.variance - explained),
    widestAt: !price && outlay.widest ? widestSpent(outlay, outlay.widest) : null,
    slope,
    meanMinutes: spread ? logNormalMean(spread) : 0,
  };
}

/** Steps of the table of a beta's quantiles, linear in between. */
const STEPS = 4096;

function widestSpent({ mean, variance }: Outlay, beta: ScaledBeta): (u: number, z: number) => number {
  const table = quantilesOf(beta);
  const sd = Math.sqrt(Math.max(0, variance - scaledBetaVariance(beta)));
  return (u, z) => {
    const at = Math.floor(u * STEPS);
    const price = table[at]! + (u * STEPS - at) * (table[at + 1]! - table[at]!);
    return mean - scaledBetaMean(beta) + price + sd * z;
  };
}

/** Quantiles at even steps, read off its chances at even steps from end to end. */
function quantilesOf(beta: ScaledBeta): Float64Array {
  const at = (step: number) => beta.low + (beta.width * step) / STEPS;
  const below = Float64Array.from({ length: STEPS + 1 }, (_, step) => scaledBetaAt(beta, at(step)).below);
  let step = 0;
  return Float64Array.from({ length: STEPS + 1 }, (_, place) => {
    const chance = place / STEPS;
    while (step < STEPS - 1 && below[step + 1]! < chance) step++;
    return at(step + (chance - below[step]!) / (below[step + 1]! - below[step]!));
  });
}

function spentIn({ price, outlay }: Branch, variance: number): Amount {
  if (!price) return logNormal(outlay.mean, variance);
  const sd = Math.sqrt(Math.max(0, variance));
  const skew = sd > 0 ? shiftedLogNormal(outlay.mean, variance, outlay.third) : null;
  if (!skew) return (z) => outlay.mean + sd * z;
  const { shift, sign, logMedian, logSd } = skew;
  return (z) => shift + sign * Math.exp(logMedian + logSd * sign * z);
}

/** The branch at a uniform number. */
export function pick(branches: readonly Branch[], u: number): Branch {
  let left = u;
  for (const branch of branches) {
    left -= branch.chance;
    if (left < 0) return branch;
  }
  return branches.findLast(({ chance }) => chance > 0)!;
}

function timeOf({ minutes, otherMinutes }: Branch, { speedFactor, speedSpread }: Pace): Amount {
  const square = speedFactor ** 2 * Math.exp(speedSpread ** 2);
  const variance = square * minutes.variance + minutes.mean ** 2 * (square - speedFactor ** 2);
  return logNormal(speedFactor * minutes.mean + otherMinutes, variance);
}

/** A log-normal of a given mean and variance. */
function logNormal(mean: number, variance: number): Amount {
  if (mean <= 0) return () => 0;
  const logVariance = Math.log(1 + variance / mean ** 2);
  const logSd = Math.sqrt(logVariance);
  return (z) => mean * Math.exp(logSd * z - logVariance / 2);
}
