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
  const drawn = {
    margins: new Float64Array(count),
    hours: new Float64Array(count),
    rates: new Float64Array(count),
  };
  for (let i = 0; i < count; i++) {
    const branch = pick(branches, next());
    const { price, share, outlay } = branch;
    const sold = price ? share * Math.exp(price.logMedian + price.logSd * normal()) : 0;
    const z = normal();
    const spread = workTime(branch, pace);
    const minutes = timeOf(branch, pace, normal());
    const spent = spentIn(branch, outlay.variance, z);
    const paid = !price && outlay.widest ? widestSpent(outlay, next(), normal()) : spent;
    const margin = sold - paid;
    const hours = minutes / 60;
    const slope = price && spread ? (pace.speedFactor * branch.covariance) / logNormalSd(spread) ** 2 : 0;
    const explained = Math.max(0, slope * pace.speedFactor * branch.covariance);
    const together = slope === 0 ? 0 : slope * (minutes - logNormalMean(spread!));
    const beside = slope === 0 ? spent : spentIn(branch, outlay.variance - explained, z) + together;
    drawn.margins[i] = margin;
    drawn.hours[i] = hours;
    drawn.rates[i] = (sold - beside) / hours;
  }
  return drawn;
}

/** Steps of the table of a beta's quantiles, linear in between. */
const STEPS = 4096;
const tables = new Map<ScaledBeta, Float64Array>();

function widestSpent({ mean, variance, widest }: Outlay, u: number, z: number): number {
  const beta = widest!;
  let table = tables.get(beta);
  if (!table) {
    table = Float64Array.from({ length: STEPS + 1 }, (_, step) => quantileOf(beta, step / STEPS));
    tables.set(beta, table);
  }
  const at = Math.floor(u * STEPS);
  const price = table[at]! + (u * STEPS - at) * (table[at + 1]! - table[at]!);
  const others = Math.max(0, variance - scaledBetaVariance(beta));
  return mean - scaledBetaMean(beta) + price + Math.sqrt(others) * z;
}

function quantileOf(beta: ScaledBeta, probability: number): number {
  let [low, high] = [beta.low, beta.low + beta.width];
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (scaledBetaAt(beta, middle).below < probability) low = middle;
    else high = middle;
  }
  return low;
}

function spentIn({ price, outlay }: Branch, variance: number, z: number): number {
  if (!price) return logNormal(outlay.mean, variance, z);
  const sd = Math.sqrt(Math.max(0, variance));
  const skew = sd > 0 ? shiftedLogNormal(outlay.mean, variance, outlay.third) : null;
  return skew
    ? skew.shift + skew.sign * Math.exp(skew.logMedian + skew.logSd * skew.sign * z)
    : outlay.mean + sd * z;
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

function timeOf({ minutes, otherMinutes }: Branch, { speedFactor, speedSpread }: Pace, z: number): number {
  const square = speedFactor ** 2 * Math.exp(speedSpread ** 2);
  const variance = square * minutes.variance + minutes.mean ** 2 * (square - speedFactor ** 2);
  return logNormal(speedFactor * minutes.mean + otherMinutes, variance, z);
}

/** A log-normal of a given mean and variance at a standard normal number. */
function logNormal(mean: number, variance: number, z: number): number {
  if (mean <= 0) return 0;
  const logVariance = Math.log(1 + variance / mean ** 2);
  return mean * Math.exp(Math.sqrt(logVariance) * z - logVariance / 2);
}
