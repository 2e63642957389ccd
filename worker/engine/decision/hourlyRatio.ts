import type { Money, MoneyPerHour, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { hypot, squared } from "../statistics/elementary/powers.ts";
import { gaussHermite, type Quadrature } from "../statistics/gaussHermite.ts";
import { type LogNormal, logNormalMean, logNormalSd } from "../statistics/logNormal.ts";
import type { LocalDistribution } from "../statistics/risingQuantiles.ts";
import type { Branch } from "./branch.ts";
import { certainAmounts, marginMixture, marginRange } from "./marginMixture.ts";
import { quantilesBetween, TOLERANCE } from "./quantilesBetween.ts";
import { addMixtureAt, type SaleMixture } from "./saleMixture.ts";

/**
 * Nodes for the hours, by how far their spread moves the margin asked for, over the spread of the margin, which smooths what is summed: then every chance is
 * right to six ten-thousandths, and beyond the last to a few thousandths (three for a ratio of 1.6).
 */
const TIMES = [
  { upTo: 0.6, rule: gaussHermite(3) },
  { upTo: 0.8, rule: gaussHermite(4) },
  { upTo: 1, rule: gaussHermite(5) },
] as const;
const MOST_TIMES = gaussHermite(7);
/** The band ends so many standard deviations from the mean. */
const BAND = 1.3;

/** One branch's margin at each node of its hours: margin / hours is below r where the margin is below r x hours. */
interface WayRatio {
  readonly hours: readonly number[];
  readonly weights: readonly Probability[];
  /** What is spent above its mean at each node: faults that cost hours cost money too. */
  readonly spent: readonly Money[];
  readonly mixture: SaleMixture;
  /** The branch's components in the mixture. */
  readonly from: number;
  readonly to: number;
}

export type HourlyRatio = readonly WayRatio[];

/**
 * Within a branch money out is linear in the hours as far as they go together, and what is left of its variance is independent of them.
 * @param times minutes of each branch, null where there is nothing to do
 * @param speedFactor mean of the common speed factor
 */
export function ratioOf(
  ways: readonly Branch[],
  times: readonly (LogNormal | null)[],
  speedFactor: number,
): HourlyRatio {
  const slopes = ways.map((way, place) => slopeOf(way, times[place]!, speedFactor));
  const mixture = marginMixture(ways.map((way, place) => apartFromHours(way, slopes[place]!, speedFactor)));
  return ways.map((way, place): WayRatio => {
    const time = times[place]!;
    if (time && !way.price && way.outlay.mean > 0) {
      const alone = perHour(marginMixture([withoutShape(way)]), way, time);
      return { hours: [1], weights: [1], spent: [0], mixture: alone, from: 0, to: alone.size };
    }
    const [from, to] = [mixture.starts[place]!, mixture.starts[place + 1]!];
    if (!time) return { hours: [0], weights: [1], spent: [0], mixture, from, to };
    const { nodes, weights } = timesFor(way, time);
    const hours = nodes.map((node) => exp(time.logMedian + time.logSd * node) / 60);
    const mean = logNormalMean(time) / 60;
    const spent = hours.map((one) => slopes[place]! * 60 * (one - mean));
    return { hours, weights, spent, mixture, from, to };
  });
}

function timesFor({ price, share, outlay }: Branch, { logSd }: LogNormal): Quadrature {
  const mean = (price ? share * logNormalMean(price) : 0) - outlay.mean;
  // Of price and outlay the wider one is integrated in closed form.
  const sd = Math.max(price ? share * logNormalSd(price) : 0, Math.sqrt(Math.max(0, outlay.variance)));
  const moved = logSd * (Math.abs(mean) + BAND * sd);
  return TIMES.find(({ upTo }) => moved <= upTo * sd)?.rule ?? MOST_TIMES;
}

/** Money out for each further minute, by least squares. */
function slopeOf({ price, covariance }: Branch, time: LogNormal | null, speedFactor: number): number {
  return time && price ? (speedFactor * covariance) / squared(logNormalSd(time)) : 0;
}

/** The branch with what the hours explain taken off the variance of its money out. */
function apartFromHours(way: Branch, slope: number, speedFactor: number): Branch {
  const { outlay, covariance } = way;
  const explained = slope * speedFactor * covariance;
  return explained > 0
    ? { ...way, outlay: { ...outlay, variance: Math.max(0, outlay.variance - explained) } }
    : way;
}

/** The branch with money out as a log-normal. */
function withoutShape(way: Branch): Branch {
  const { mean, variance } = way.outlay;
  return { ...way, outlay: { mean, variance, third: 0 } };
}

/** Money out alone over hours: the ratio of two log-normals is one. */
function perHour(mixture: SaleMixture, { outlay }: Branch, { logMedian, logSd }: LogNormal): SaleMixture {
  const spent = mixture.outlaySpread[0]!;
  mixture.centre[0] = (spent > 0 ? mixture.centre[0]! : log(outlay.mean)) - logMedian + log(60);
  mixture.outlaySpread[0] = hypot(spent, logSd);
  mixture.outlay[0] = 0;
  return mixture;
}

/** Chance that a course brings at most this for each hour. */
export function ratioAt(ratio: HourlyRatio, rate: MoneyPerHour): LocalDistribution {
  const sum = { below: 0, density: 0, slope: 0 };
  for (const { hours, weights, spent, mixture, from, to } of ratio) {
    for (let node = 0; node < hours.length; node++)
      addMixtureAt(sum, mixture, rate, from, to, weights[node]!, hours[node]!, spent[node]!);
  }
  return sum;
}

/**
 * 10 and 90 % points of the realised margin per hour.
 * @param guess about where the 10 % point lies
 */
export function ratioBand(
  ratio: HourlyRatio,
  margin: SaleMixture,
  guess: MoneyPerHour,
): { p10: MoneyPerHour; p90: MoneyPerHour } {
  const [low, high] = marginRange(margin);
  // Over long hours a loss or a gain for each hour dwindles to nothing, so 0 bounds whichever end has its sign.
  const shortest = Math.max(1 / 60, Math.min(...ratio.flatMap(({ hours }) => hours)));
  const invertible = {
    at: (rate: number) => ratioAt(ratio, rate),
    low: Math.min(0, low / shortest, ...ratio.map(lowest)) - TOLERANCE,
    high: Math.max(0, high / shortest) + TOLERANCE,
    guess,
  };
  const jumps = ratio.some(mayBeNothing) ? [0] : [];
  const [p10, p90] = quantilesBetween(jumps, invertible, [0.1, 0.9]);
  return { p10: p10!, p90: p90! };
}

function lowest({ mixture, from, to }: WayRatio): Money {
  return marginRange(mixture, from, to)[0];
}

function mayBeNothing({ mixture, from, to }: WayRatio): boolean {
  return certainAmounts(mixture, from, to).includes(0);
}
