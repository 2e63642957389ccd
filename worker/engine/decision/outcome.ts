import type { Minutes, Money, MoneyPerHour, Probability } from "../quantity.ts";
import { gaussHermite } from "../statistics/gaussHermite.ts";
import {
  type LogNormal,
  logNormalCdf,
  logNormalDensity,
  logNormalFromMean,
  logNormalQuantile,
} from "../statistics/logNormal.ts";
import { type LocalDistribution, risingQuantiles } from "../statistics/risingQuantiles.ts";
import type { Spread } from "./appraisal.ts";
import type { Branch } from "./branch.ts";
import { expectationOf } from "./expectation.ts";
import type { Pace } from "./pace.ts";
import { emptyMixture, mixtureAt, type SaleMixture } from "./saleMixture.ts";
import { workTime } from "./workTime.ts";

/** How a course turns out: distribution of margin, hours and their ratio. */
export interface Outcome {
  readonly margin: Spread & { readonly twentieths: readonly Money[] };
  readonly hours: Spread;
  /** rate = E[margin] / E[hours]: by the renewal-reward theorem the long-run rate of someone who repeats such flips. */
  readonly marginPerHour: {
    readonly rate: MoneyPerHour;
    readonly p10: MoneyPerHour;
    readonly p90: MoneyPerHour;
  } | null;
  readonly lossProbability: Probability;
  readonly belowGoalProbability: Probability;
  readonly netBenefit: Money;
}

/**
 * Distribution of a course from its branches. Within a branch the going rate is log-normal and integrated in closed form; money out and
 * hours are matched in mean and variance (normal by two, log-normal by three Gauss-Hermite nodes) and taken as independent of each other:
 * an approximation by moments.
 */
export function outcomeOf(branches: readonly Branch[], pace: Pace): Outcome {
  const ways = branches.filter(({ chance }) => chance > 0);
  const expected = expectationOf(ways, pace);
  const margin = marginMixture(ways);
  const times = ways.map((branch) => workTime(branch, pace));
  const [p10, p50, p90, ...twentieths] = inOrder([0.1, 0.5, 0.9, ...TWENTIETHS], (p) =>
    marginQuantiles(margin, p),
  );
  const worked = expected.hours > 0;
  const ratio = ratioOf(ways, times);
  return {
    margin: { mean: expected.margin, p10: p10!, p50: p50!, p90: p90!, twentieths },
    hours: hoursSpread(ways, times, expected.hours),
    marginPerHour: worked ? { rate: expected.margin / expected.hours, ...ratioBand(ratio, margin) } : null,
    lossProbability: strictlyBelow(mixtureAt(margin, -JUST).below),
    belowGoalProbability: worked ? strictlyBelow(ratioAt(ratio, pace.hourlyGoal - JUST).below) : 0,
    netBenefit: expected.netBenefit,
  };
}

const TWENTIETHS: readonly Probability[] = Array.from({ length: 20 }, (_, index) => (index + 0.5) / 20);
const OUTLAYS = gaussHermite(2);
const TIMES = gaussHermite(3);
/** P(X < x) is read this far below x: the two differ only at a certain outcome. */
const JUST = 1e-9;

function strictlyBelow(probability: Probability): Probability {
  return Math.min(1, Math.max(0, probability));
}

/** Each branch at the nodes of money out; where nothing is sold, one log-normal outlay. */
function marginMixture(ways: readonly Branch[]): SaleMixture {
  const sizes = ways.map(({ price, outlay }) => (price && outlay.variance > 0 ? OUTLAYS.nodes.length : 1));
  const mixture = emptyMixture(sizes.reduce((sum, size) => sum + size, 0));
  let i = 0;
  ways.forEach(({ chance, price, share, outlay }, way) => {
    const sd = Math.sqrt(Math.max(0, outlay.variance));
    const several = sizes[way]! > 1;
    for (let node = 0; node < sizes[way]!; node++, i++) {
      mixture.weight[i] = several ? chance * OUTLAYS.weights[node]! : chance;
      mixture.outlay[i] = several ? outlay.mean + sd * OUTLAYS.nodes[node]! : outlay.mean;
      const spent = !price && sd > 0 ? logNormalFromMean(outlay.mean, sd) : null;
      mixture.centre[i] = price ? price.logMedian + Math.log(share) : (spent?.logMedian ?? 0);
      mixture.spread[i] = price?.logSd ?? 0;
      mixture.outlaySpread[i] = spent?.logSd ?? 0;
    }
  });
  return mixture;
}

/** Tail chance beyond the bracket in which quantiles are sought. */
const FAR_Z = 5;

/** An interval that holds all but a negligible share of the margin. */
function marginRange({ size, outlay, centre, spread, outlaySpread }: SaleMixture): readonly [Money, Money] {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < size; i++) {
    const sold = spread[i]! > 0;
    const uncertain = outlaySpread[i]! > 0;
    const far = Math.exp(centre[i]! + FAR_Z * (sold ? spread[i]! : outlaySpread[i]!));
    low = Math.min(low, uncertain ? -far : -outlay[i]!);
    high = Math.max(high, sold ? far - outlay[i]! : uncertain ? 0 : -outlay[i]!);
  }
  return [low, high];
}

/** A Newton step shorter than this, in money or minutes, has landed to many more digits than any figure that is shown. */
const TOLERANCE = 1e-3;

function marginQuantiles(mixture: SaleMixture, probabilities: readonly Probability[]): number[] {
  const [low, high] = marginRange(mixture);
  if (high - low < TOLERANCE) return probabilities.map(() => low);
  const invertible = {
    at: (x: number) => mixtureAt(mixture, x),
    low: low - TOLERANCE,
    high,
  };
  return risingQuantiles(invertible, probabilities, TOLERANCE);
}

/** Runs something that wants rising arguments, in any order of arguments. */
function inOrder(
  arguments_: readonly number[],
  run: (rising: readonly number[]) => readonly number[],
): number[] {
  const order = arguments_.map((_, index) => index).sort((a, b) => arguments_[a]! - arguments_[b]!);
  const values = run(order.map((index) => arguments_[index]!));
  const placed = new Array<number>(arguments_.length);
  order.forEach((index, place) => {
    placed[index] = values[place]!;
  });
  return placed;
}

/** The margin's mixture at each node of hours: margin / hours is below r where the margin is below r x hours. */
type Ratio = readonly {
  readonly hours: number;
  readonly weight: Probability;
  readonly mixture: SaleMixture;
}[];

function ratioOf(ways: readonly Branch[], times: readonly (LogNormal | null)[]): Ratio {
  return ways.flatMap((way, place) => {
    const mixture = marginMixture([way]);
    const time = times[place]!;
    if (!time) return [{ hours: 0, weight: 1, mixture }];
    return TIMES.nodes.map((node, index) => ({
      hours: Math.exp(time.logMedian + time.logSd * node) / 60,
      weight: TIMES.weights[index]!,
      mixture,
    }));
  });
}

function ratioAt(ratio: Ratio, rate: MoneyPerHour): LocalDistribution {
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

function ratioBand(ratio: Ratio, margin: SaleMixture): { p10: MoneyPerHour; p90: MoneyPerHour } {
  const [low, high] = marginRange(margin);
  // Over long hours a loss or a gain for each hour dwindles to nothing, so 0 bounds whichever end has its sign.
  const shortest = Math.max(1 / 60, Math.min(...ratio.map(({ hours }) => hours)));
  const invertible = {
    at: (rate: number) => ratioAt(ratio, rate),
    low: Math.min(0, low / shortest) - TOLERANCE,
    high: Math.max(0, high / shortest) + TOLERANCE,
  };
  const [p10, p90] = risingQuantiles(invertible, [0.1, 0.9], TOLERANCE);
  return { p10: p10!, p90: p90! };
}

function hoursSpread(ways: readonly Branch[], times: readonly (LogNormal | null)[], mean: number): Spread {
  const timed = times.filter((time) => time !== null);
  if (timed.length === 0) return { mean: 0, p10: 0, p50: 0, p90: 0 };
  const at = (minutes: Minutes) => {
    let below = 0;
    let density = 0;
    let slope = 0;
    ways.forEach(({ chance }, place) => {
      const time = times[place];
      below += chance * (time ? logNormalCdf(time, minutes) : 1);
      if (!time || minutes <= 0) return;
      const thick = chance * logNormalDensity(time, minutes);
      density += thick;
      slope -= (thick * ((Math.log(minutes) - time.logMedian) / time.logSd ** 2 + 1)) / minutes;
    });
    return { below, density, slope };
  };
  const high = Math.max(...timed.map((time) => logNormalQuantile(time, 1 - 1e-6)));
  const invertible = { at, low: -TOLERANCE, high };
  const [p10, p50, p90] = risingQuantiles(invertible, [0.1, 0.5, 0.9], TOLERANCE);
  return { mean, p10: p10! / 60, p50: p50! / 60, p90: p90! / 60 };
}
