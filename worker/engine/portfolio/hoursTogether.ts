import type { Branch } from "../decision/branch.ts";
import type { Pace } from "../decision/pace.ts";
import { TOLERANCE } from "../decision/quantilesBetween.ts";
import { emptyMixture, mixtureAt, type SaleMixture } from "../decision/saleMixture.ts";
import type { OpenCourse } from "../decision/weighedCourse.ts";
import type { Hours, Minutes, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { convolve, type Lattice, latticeOf, type Part } from "../statistics/lattice.ts";
import { logNormalFromMean, logNormalQuantile } from "../statistics/logNormal.ts";
import { risingQuantiles } from "../statistics/risingQuantiles.ts";

/** Hours of several courses done by one person. */
export interface HoursTogether {
  /** Chance that they take more than this. */
  readonly chanceAbove: (hours: Hours) => Probability;
  /** Hours within which they are done with rising chances. */
  readonly quantiles: (rising: readonly Probability[]) => readonly Hours[];
}

/** Chance beyond which the work of one branch is cut off. */
const TAIL = 1e-6;
/** Lattice points: some for each course, so that each keeps its shape, within limits. */
const POINTS = { each: 64, least: 512, most: 4096 };

/**
 * The sum of the courses' hours. Work at speed 1 is independent from find to find and is summed on a lattice; the user's own pace is one factor that
 * all of it shares, so a slow month is slow for every bike: it is integrated in closed form at each point. Travel is fixed and adds.
 */
export function hoursTogether(courses: readonly OpenCourse[], pace: Pace): HoursTogether {
  const working = courses.filter(({ branches }) => branches.some(({ minutes }) => minutes.mean > 0));
  const fixed = courses.reduce((sum, { branches }) => sum + expectedOther(branches), 0);
  if (working.length === 0)
    return {
      chanceAbove: (hours) => (fixed > hours * 60 + TOLERANCE ? 1 : 0),
      quantiles: (rising) => rising.map(() => fixed / 60),
    };
  const { lattice, step } = workAtSpeedOne(working);
  const times = paced(lattice, step, fixed, pace);
  const at = (minutes: Minutes) => mixtureAt(times, minutes);
  const high = fixed + lattice.length * step * pace.speedFactor * exp(6 * pace.speedSpread);
  return {
    chanceAbove: (hours) => Math.min(1, Math.max(0, 1 - at(hours * 60).below)),
    quantiles: (rising) =>
      risingQuantiles({ at, low: fixed - TOLERANCE, high }, rising, TOLERANCE).map((minutes) => minutes / 60),
  };
}

/** Minutes that do not depend on pace are the same in every branch of a course that has them. */
function expectedOther(branches: readonly Branch[]): Minutes {
  return branches.reduce((sum, { chance, otherMinutes }) => sum + chance * otherMinutes, 0);
}

function workAtSpeedOne(courses: readonly OpenCourse[]): { lattice: Lattice; step: Minutes } {
  const works = courses.map(({ branches }) => branches.map(partOf));
  const highs = works.map((parts) => Math.max(...parts.map(highOf)));
  const points = Math.min(POINTS.most, Math.max(POINTS.least, POINTS.each * works.length));
  const step = highs.reduce((sum, high) => sum + high, 0) / points;
  const lattice = works
    .map((parts, index) => latticeOf(parts, step, highs[index]!))
    .reduce((sum, one) => convolve(sum, one));
  return { lattice, step };
}

function partOf({ chance, minutes: { mean, variance } }: Branch): Part {
  const uncertain = mean > 0 && variance > 0;
  return { chance, quantity: uncertain ? logNormalFromMean(mean, Math.sqrt(variance)) : mean };
}

function highOf({ chance, quantity }: Part): Minutes {
  if (chance === 0) return 0;
  return typeof quantity === "number" ? quantity : logNormalQuantile(quantity, 1 - TAIL);
}

/** Each lattice point times the log-normal pace, plus what is fixed. */
function paced(
  lattice: Lattice,
  step: Minutes,
  fixed: Minutes,
  { speedFactor, speedSpread }: Pace,
): SaleMixture {
  const mixture = emptyMixture([lattice.length]);
  const logPace = log(speedFactor) - squared(speedSpread) / 2;
  lattice.forEach((chance, point) => {
    mixture.weight[point] = chance;
    mixture.outlay[point] = -fixed;
    if (point === 0) return;
    if (speedSpread === 0) mixture.outlay[point]! -= point * step * speedFactor;
    mixture.centre[point] = log(point * step) + logPace;
    mixture.spread[point] = speedSpread;
  });
  return mixture;
}
