import type { MoneyPerHour, Probability } from "../quantity.ts";
import { gaussHermite } from "../statistics/gaussHermite.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import type { LocalDistribution } from "../statistics/risingQuantiles.ts";
import type { Branch } from "./branch.ts";
import { certainAmounts, marginMixture, marginRange } from "./marginMixture.ts";
import { quantilesBetween, TOLERANCE } from "./quantilesBetween.ts";
import { mixtureAt, type SaleMixture } from "./saleMixture.ts";

/** Hours vary by a fifth or so: seven nodes hold every chance to three thousandths. */
const TIMES = gaussHermite(7);

/** The margin's mixture at each node of hours: margin / hours is below r where the margin is below r x hours. */
export type HourlyRatio = readonly {
  readonly hours: number;
  readonly weight: Probability;
  readonly mixture: SaleMixture;
}[];

/** @param times minutes of each branch, null where there is nothing to do */
export function ratioOf(ways: readonly Branch[], times: readonly (LogNormal | null)[]): HourlyRatio {
  return ways.flatMap((way, place) => {
    const mixture = marginMixture([way]);
    const time = times[place]!;
    if (!time) return [{ hours: 0, weight: 1, mixture }];
    if (!way.price) return [{ hours: 1, weight: 1, mixture: perHour(mixture, time) }];
    return TIMES.nodes.map((node, index) => ({
      hours: Math.exp(time.logMedian + time.logSd * node) / 60,
      weight: TIMES.weights[index]!,
      mixture,
    }));
  });
}

/** Money out alone over hours: the ratio of two log-normals is one. */
function perHour(mixture: SaleMixture, { logMedian, logSd }: LogNormal): SaleMixture {
  const outlay = mixture.outlay[0]!;
  if (outlay <= 0) return mixture;
  const spent = mixture.outlaySpread[0]!;
  mixture.centre[0] = (spent > 0 ? mixture.centre[0]! : Math.log(outlay)) - logMedian + Math.log(60);
  mixture.outlaySpread[0] = Math.hypot(spent, logSd);
  return mixture;
}

/** Chance that a course brings at most this for each hour. */
export function ratioAt(ratio: HourlyRatio, rate: MoneyPerHour): LocalDistribution {
  let below = 0;
  let density = 0;
  let slope = 0;
  for (const { hours, weight, mixture } of ratio) {
    const one = mixtureAt(mixture, rate * hours);
    below += weight * one.below;
    density += weight * hours * one.density;
    slope += weight * hours * hours * one.slope;
  }
  return { below, density, slope };
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
  const shortest = Math.max(1 / 60, Math.min(...ratio.map(({ hours }) => hours)));
  const invertible = {
    at: (rate: number) => ratioAt(ratio, rate),
    low: Math.min(0, low / shortest, ...ratio.map(({ mixture }) => marginRange(mixture)[0])) - TOLERANCE,
    high: Math.max(0, high / shortest) + TOLERANCE,
    guess,
  };
  const nothing = ratio.flatMap(({ mixture }) => certainAmounts(mixture)).filter((amount) => amount === 0);
  const [p10, p90] = quantilesBetween(nothing.slice(0, 1), invertible, [0.1, 0.9]);
  return { p10: p10!, p90: p90! };
}
