import type { Minutes, Money, MoneyPerHour, Probability } from "../quantity.ts";
import type { Moments } from "../service/moments.ts";
import { gaussHermite } from "../statistics/gaussHermite.ts";
import {
  type LogNormal,
  logNormalCdf,
  logNormalFromMean,
  logNormalMean,
  logNormalQuantile,
} from "../statistics/logNormal.ts";
import { monotoneRoot } from "../statistics/monotoneRoot.ts";
import type { Spread } from "./appraisal.ts";
import type { Branch } from "./branch.ts";

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

export interface Pace {
  readonly hourlyGoal: MoneyPerHour;
  readonly speedFactor: number;
  readonly speedSpread: number;
}

/**
 * Distribution of a course from its branches. Within a branch the going rate is log-normal and integrated in closed form; money out and
 * hours are matched in mean and variance (normal by three, log-normal by five Gauss-Hermite nodes) and taken as independent of each other:
 * an approximation by moments.
 */
export function outcomeOf(branches: readonly Branch[], pace: Pace): Outcome {
  const cases = branches.filter(({ chance }) => chance > 0).map((branch) => settleCase(branch, pace));
  const meanMargin = total(cases, ({ chance, meanMargin }) => chance * meanMargin);
  const meanHours = total(cases, ({ chance, time }) => chance * time.mean) / 60;
  const marginCdf = (x: Money) => total(cases, (one) => one.chance * marginBelow(one, x));
  const marginAt = quantiles(marginCdf, marginRange(cases));
  const ratioBelow = (rate: MoneyPerHour) => total(cases, (one) => one.chance * ratioBelowIn(one, rate));
  const hours = hoursSpread(cases, meanHours);
  return {
    margin: {
      mean: meanMargin,
      ...tenFiftyNinety(marginAt),
      twentieths: Array.from({ length: 20 }, (_, index) => marginAt((index + 0.5) / 20)),
    },
    hours,
    marginPerHour: meanHours > 0 ? rateBand(meanMargin / meanHours, ratioBelow, cases) : null,
    lossProbability: strictlyBelow(marginCdf, 0),
    belowGoalProbability: meanHours > 0 ? strictlyBelow(ratioBelow, pace.hourlyGoal) : 0,
    netBenefit: meanMargin - pace.hourlyGoal * meanHours,
  };
}

interface Case {
  readonly chance: Probability;
  readonly price: LogNormal | null;
  readonly share: number;
  /** Nodes and weights of money out. */
  readonly outlays: readonly (readonly [Money, number])[];
  /** Nodes (hours) and weights. */
  readonly times: readonly (readonly [number, number])[];
  readonly time: { readonly mean: Minutes; readonly distribution: LogNormal | null };
  readonly meanMargin: Money;
}

const THREE = gaussHermite(3);
const FIVE = gaussHermite(5);

function settleCase(branch: Branch, pace: Pace): Case {
  const { chance, price, share, outlay } = branch;
  const time = timeOf(branch.minutes, branch.otherMinutes, pace);
  const sd = Math.sqrt(Math.max(0, outlay.variance));
  const received = price ? share * logNormalMean(price) : 0;
  return {
    chance,
    price,
    share,
    outlays:
      sd > 0
        ? THREE.nodes.map((node, i) => [outlay.mean + sd * node, THREE.weights[i]!] as const)
        : [[outlay.mean, 1]],
    times: timeNodes(time),
    time,
    meanMargin: received - outlay.mean,
  };
}

/**
 * Minutes of work X at speed 1 with a common speed factor k, plus fixed time:
 * mean = E[k] E[X] + fixed, variance = E[k^2] Var X + E[X]^2 Var k, matched by a log-normal.
 */
function timeOf(work: Moments, other: Minutes, { speedFactor, speedSpread }: Pace): Case["time"] {
  const square = speedFactor ** 2 * Math.exp(speedSpread ** 2);
  const mean = speedFactor * work.mean + other;
  const variance = square * work.variance + work.mean ** 2 * (square - speedFactor ** 2);
  return { mean, distribution: mean > 0 ? logNormalFromMean(mean, Math.sqrt(Math.max(0, variance))) : null };
}

function timeNodes({ mean, distribution }: Case["time"]): readonly (readonly [number, number])[] {
  if (!distribution || distribution.logSd === 0) return [[mean / 60, 1]];
  return FIVE.nodes.map(
    (node, i) =>
      [Math.exp(distribution.logMedian + distribution.logSd * node) / 60, FIVE.weights[i]!] as const,
  );
}

function marginBelow({ price, share, outlays }: Case, x: Money): Probability {
  let sum = 0;
  for (const [outlay, weight] of outlays) {
    sum +=
      weight * (price && share > 0 ? logNormalCdf(price, (x + outlay) / share) : x + outlay >= 0 ? 1 : 0);
  }
  return sum;
}

function ratioBelowIn(one: Case, rate: MoneyPerHour): Probability {
  let sum = 0;
  for (const [hours, weight] of one.times) sum += weight * marginBelow(one, rate * hours);
  return sum;
}

/** P(X < x) from P(X <= x): they differ only at a certain outcome. */
function strictlyBelow(cdf: (x: number) => Probability, x: number): Probability {
  return Math.min(1, Math.max(0, cdf(x - 1e-9)));
}

const FAR = 1e-6;

function marginRange(cases: readonly Case[]): readonly [Money, Money] {
  let low = Infinity;
  let high = -Infinity;
  for (const { price, share, outlays } of cases) {
    for (const [outlay] of outlays) {
      low = Math.min(low, -outlay);
      high = Math.max(high, (price ? share * logNormalQuantile(price, 1 - FAR) : 0) - outlay);
    }
  }
  return [low - 1e-6, high + 1e-6];
}

function quantiles(
  cdf: (x: number) => Probability,
  [low, high]: readonly [number, number],
): (p: Probability) => number {
  return (p) => monotoneRoot((x) => cdf(x) - p, low, high, TOLERANCE);
}

/** A millionth of the range: below a cent. */
const TOLERANCE = 1e-7;

function rateBand(rate: MoneyPerHour, below: (rate: MoneyPerHour) => Probability, cases: readonly Case[]) {
  const shortest = Math.min(...cases.flatMap(({ times }) => times.map(([hours]) => hours)));
  const [low, high] = marginRange(cases);
  const hours = Math.max(shortest, 1 / 60);
  // Over long hours a loss or a gain for each hour dwindles to nothing, so 0 bounds whichever end has its sign.
  const at = quantiles(below, [Math.min(0, low / hours) - 1e-6, Math.max(0, high / hours) + 1e-6]);
  return { rate, p10: at(0.1), p90: at(0.9) };
}

function hoursSpread(cases: readonly Case[], mean: number): Spread {
  const timed = cases.filter(({ time }) => time.distribution !== null);
  if (timed.length === 0) return { mean: 0, p10: 0, p50: 0, p90: 0 };
  const cdf = (minutes: Minutes) =>
    total(
      cases,
      ({ chance, time }) =>
        chance * (time.distribution ? logNormalCdf(time.distribution, minutes) : minutes >= 0 ? 1 : 0),
    );
  const high = Math.max(...timed.map(({ time }) => logNormalQuantile(time.distribution!, 1 - FAR)));
  const at = quantiles(cdf, [-1e-6, high + 1e-6]);
  return { mean, p10: at(0.1) / 60, p50: at(0.5) / 60, p90: at(0.9) / 60 };
}

function tenFiftyNinety(at: (p: Probability) => number) {
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

function total<T>(items: readonly T[], of: (item: T) => number): number {
  let sum = 0;
  for (const item of items) sum += of(item);
  return sum;
}
