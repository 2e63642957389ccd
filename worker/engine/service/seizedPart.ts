import type { Minutes, Probability, ThreePoint } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { expm1 } from "../statistics/elementary/expm1.ts";
import { log, log1p } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { monotoneRoot } from "../statistics/monotoneRoot.ts";
import type { Moments } from "./moments.ts";

/**
 * Time until a seized part comes free: never for a share of them; for the rest `from` plus a time X whose hazard falls, an exponential time whose rate is
 * gamma-distributed over parts (Lomax, Transactions of the ASA 49 (1954) 847-852): P(X > x) = (1 + x / scale)^-shape.
 */
export interface ReleaseTime {
  /** No part comes free sooner. */
  readonly from: Minutes;
  readonly never: Probability;
  /** Infinity: the exponential limit, whose hazard is constant and whose mean is the scale. */
  readonly shape: number;
  readonly scale: Minutes;
}

/** Of the parts that come free, the share that is out by the pessimistic time. */
const OUT_BY_PESSIMISTIC: Probability = 0.95;
/** Scales, in units of the median, between which one is sought: beyond the longest the exponential limit tells the same times to four digits. */
const SHORTEST = 1e-9;
const LONGEST = 1e4;

/**
 * Fits the release time to a three-point estimate (a, m, b) and the chance p of not being out by b. Of the parts that come free half are out by m and 95 %
 * by b; the never share is 1 - (1 - p) / 0.95. A chance below 5 % leaves no such share: then the 1 - p point stands at b. Where b lies so near that the
 * hazard could not fall, (b - a) / (m - a) < ln 20 / ln 2, the exponential limit with median m stands in; more than 5 % of its parts are then still
 * fast at b, and the never share is what is left of p beside them, at least 0.
 * @param estimate with optimistic < likely < pessimistic
 * @param failureChance above 0 and below 1
 */
export function releaseTime(
  { optimistic, likely, pessimistic }: ThreePoint,
  failureChance: Probability,
): ReleaseTime {
  const median = likely - optimistic;
  const far = pessimistic - optimistic;
  const stillFast = Math.min(1 - OUT_BY_PESSIMISTIC, failureChance);
  // P(X > x) = 1/2 at the median and stillFast at b: the ratio of log survivals does not depend on the shape and rises with the scale.
  const wanted = log(stillFast) / log(0.5);
  const excess = (logScale: number) => {
    const scale = median * exp(logScale);
    return log1p(far / scale) / log1p(median / scale) - wanted;
  };
  const [low, high] = [log(SHORTEST), log(LONGEST)];
  if (excess(high) <= 0) {
    const scale = median / Math.LN2;
    const outByFar = -expm1(-far / scale);
    const never = Math.max(0, 1 - (1 - failureChance) / outByFar);
    return { from: optimistic, never, shape: Number.POSITIVE_INFINITY, scale };
  }
  const scale = median * exp(monotoneRoot(excess, low, high));
  const shape = Math.LN2 / log1p(median / scale);
  return { from: optimistic, never: 1 - (1 - failureChance) / (1 - stillFast), shape, scale };
}

/** Chance that the part is not free after some minutes. */
export function stillSeized(release: ReleaseTime, minutes: Minutes): Probability {
  const beyond = minutes - release.from;
  return beyond <= 0 ? 1 : release.never + (1 - release.never) * survival(release, beyond);
}

/**
 * Mean and variance of min(T, limit), the minutes spent where work stops at the limit, in closed form: with u = 1 + x / scale the integrals of the survival
 * and of x times it are powers of u.
 * @param limit not below `from`
 */
export function minutesUntil(release: ReleaseTime, limit: Minutes): Moments {
  const { from, never } = release;
  const span = limit - from;
  const { first, second } = cappedMoments(release, span);
  const mean = never * span + (1 - never) * first;
  const square = never * squared(span) + (1 - never) * second;
  return { mean: from + mean, variance: Math.max(0, square - squared(mean)) };
}

/** P(X > x) of a part that comes free. */
function survival({ shape, scale }: ReleaseTime, x: Minutes): Probability {
  return Number.isFinite(shape) ? exp(-shape * log1p(x / scale)) : exp(-x / scale);
}

/** E[min(X, x)] and E[min(X, x)^2] of a part that comes free: the integrals of P(X > y) and of 2 y P(X > y) from 0 to x. */
function cappedMoments({ shape, scale }: ReleaseTime, x: Minutes): { first: Minutes; second: number } {
  if (!Number.isFinite(shape)) {
    const gone = -expm1(-x / scale);
    const first = scale * gone;
    return { first, second: 2 * scale * (first - x * (1 - gone)) };
  }
  const logAt = log1p(x / scale);
  const one = powerIntegral(1 - shape, logAt);
  return { first: scale * one, second: 2 * squared(scale) * (powerIntegral(2 - shape, logAt) - one) };
}

/** Integral of u^(power - 1) from 1 to exp(end). */
function powerIntegral(power: number, end: number): number {
  return power === 0 ? end : expm1(power * end) / power;
}
