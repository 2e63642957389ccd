import type { Money, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { type LogNormal, logNormalMean } from "../statistics/logNormal.ts";

/** Expected going rate as a function of visible condition. */
export interface ConditionCurve {
  /** Condition is held between 0 and 1. */
  readonly mean: (condition: number) => Money;
  /** The most that a rise of condition can ever add, wherever it starts. */
  readonly largestRise: (penalty: Probability) => Money;
}

/** One stretch between two knots: log of the mean = constant + linear u + square u^2, u from 0 at the first knot to 1 at the second. */
interface Stretch {
  readonly from: number;
  readonly width: number;
  readonly constant: number;
  readonly linear: number;
  readonly square: number;
}

/**
 * The curve through a regression's predictions. Between two knots the log of the median is linear in condition and the log-variance quadratic (a
 * quadratic form in a row that moves along a line), so the log of the mean is a parabola: three predictions fix it exactly. Serves inside the search
 * for the best plan, where a prediction each time would be too slow.
 * @param predict the going rate at a condition
 * @param knots rising, from 0 to 1
 */
export function conditionCurve(
  predict: (condition: number) => LogNormal,
  knots: readonly number[],
): ConditionCurve {
  const logMean = (condition: number) => log(logNormalMean(predict(condition)));
  const ends = knots.map(logMean);
  const stretches = knots.slice(1).map((to, index): Stretch => {
    const from = knots[index]!;
    const [start, middle, end] = [ends[index]!, logMean((from + to) / 2), ends[index + 1]!];
    return {
      from,
      width: to - from,
      constant: start,
      linear: 4 * middle - 3 * start - end,
      square: 2 * (start + end) - 4 * middle,
    };
  });
  // A rise is the slope summed over the step, and the slope of the mean is that of its log times the mean.
  const steepest = Math.max(0, ...stretches.map((stretch) => steepestIn(stretch) * highestIn(stretch)));
  return {
    mean: (condition) => exp(at(stretches, Math.min(1, Math.max(0, condition)))),
    largestRise: (penalty) => steepest * penalty,
  };
}

function at(stretches: readonly Stretch[], condition: number): number {
  let index = stretches.length - 1;
  while (index > 0 && condition < stretches[index]!.from) index--;
  const { from, width, constant, linear, square } = stretches[index]!;
  const along = (condition - from) / width;
  return constant + along * (linear + square * along);
}

/** No less than the mean anywhere on a stretch. */
function highestIn(stretch: Stretch): Money {
  const { constant, linear, square } = stretch;
  const peak = square < 0 ? Math.min(1, Math.max(0, -linear / (2 * square))) : 0;
  const logs = [0, peak, 1].map((along) => constant + along * (linear + square * along));
  return exp(Math.max(...logs));
}

/** A parabola is steepest at one of its ends. */
function steepestIn({ width, linear, square }: Stretch): number {
  return Math.max(linear, linear + 2 * square) / width;
}
