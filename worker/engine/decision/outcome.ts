import type { Minutes, Money, MoneyPerHour, Probability } from "../quantity.ts";
import { log } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import {
  type LogNormal,
  logNormalCdf,
  logNormalDensity,
  logNormalQuantile,
} from "../statistics/logNormal.ts";
import { risingQuantiles } from "../statistics/risingQuantiles.ts";
import type { Spread } from "./appraisal.ts";
import type { Branch } from "./branch.ts";
import { expectationOf } from "./expectation.ts";
import { ratioAt, ratioBand, ratioOf } from "./hourlyRatio.ts";
import { certainAmounts, marginMixture, marginRange } from "./marginMixture.ts";
import type { Pace } from "./pace.ts";
import { quantilesBetween, TOLERANCE } from "./quantilesBetween.ts";
import { mixtureAt, type SaleMixture } from "./saleMixture.ts";
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
 * Distribution of a course from its branches. Within a branch the going rate is log-normal and integrated in closed form; money out is matched in mean,
 * variance and skewness (normal, or a shifted log-normal), hours in mean and variance (log-normal), and money follows hours on its regression line: an
 * approximation by moments. What closed form does not reach is summed at Gauss-Hermite nodes, as near as millions of draws can tell (`npm run proof`).
 */
export function outcomeOf(branches: readonly Branch[], pace: Pace): Outcome {
  const ways = branches.filter(({ chance }) => chance > 0);
  const expected = expectationOf(ways, pace);
  const margin = marginMixture(ways);
  const times = ways.map((branch) => workTime(branch, pace));
  const rising = marginQuantiles(margin, RISING);
  const at = (probability: Probability) => rising[RISING.indexOf(probability)]!;
  const p10 = at(0.1);
  const worked = expected.hours > 0;
  const ratio = ratioOf(ways, times, pace.speedFactor);
  return {
    margin: {
      mean: expected.margin,
      p10,
      p50: at(0.5),
      p90: at(0.9),
      twentieths: TWENTIETHS.map(at),
    },
    hours: hoursSpread(ways, times, expected.hours),
    marginPerHour: worked
      ? { rate: expected.margin / expected.hours, ...ratioBand(ratio, margin, p10 / expected.hours) }
      : null,
    lossProbability: strictlyBelow(mixtureAt(margin, -JUST).below),
    belowGoalProbability: worked ? strictlyBelow(ratioAt(ratio, pace.hourlyGoal - JUST).below) : 0,
    netBenefit: expected.netBenefit,
  };
}

const TWENTIETHS: readonly Probability[] = Array.from({ length: 20 }, (_, index) => (index + 0.5) / 20);
const RISING: readonly Probability[] = [0.1, 0.5, 0.9, ...TWENTIETHS].sort((a, b) => a - b);
/** P(X < x) is read this far below x: the two differ only at a certain outcome. */
const JUST = 1e-9;

function strictlyBelow(probability: Probability): Probability {
  return Math.min(1, Math.max(0, probability));
}

function marginQuantiles(mixture: SaleMixture, probabilities: readonly Probability[]): number[] {
  const [low, high] = marginRange(mixture);
  if (high - low < TOLERANCE) return probabilities.map(() => low);
  const at = (x: number) => mixtureAt(mixture, x);
  return quantilesBetween(certainAmounts(mixture), { at, low: low - TOLERANCE, high }, probabilities);
}

function hoursSpread(ways: readonly Branch[], times: readonly (LogNormal | null)[], mean: number): Spread {
  const timed = times.filter((time) => time !== null);
  if (timed.length === 0) return { mean: 0, p10: 0, p50: 0, p90: 0 };
  const at = (minutes: Minutes) => {
    let below = 0;
    let density = 0;
    let slope = 0;
    const logMinutes = log(Math.max(0, minutes));
    for (let place = 0; place < ways.length; place++) {
      const { chance } = ways[place]!;
      const time = times[place]!;
      below += chance * (time ? logNormalCdf(time, minutes, logMinutes) : 1);
      if (time === null || minutes <= 0) continue;
      const thick = chance * logNormalDensity(time, minutes, logMinutes);
      density += thick;
      slope -= (thick * ((logMinutes - time.logMedian) / squared(time.logSd) + 1)) / minutes;
    }
    return { below, density, slope };
  };
  const high = Math.max(...timed.map((time) => logNormalQuantile(time, 1 - 1e-6)));
  const invertible = { at, low: -TOLERANCE, high };
  const [p10, p50, p90] = risingQuantiles(invertible, [0.1, 0.5, 0.9], TOLERANCE);
  return { mean, p10: p10! / 60, p50: p50! / 60, p90: p90! / 60 };
}
