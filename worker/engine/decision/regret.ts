import type { Money } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { type LogNormal, logNormalMean } from "../statistics/logNormal.ts";
import { normalCdfGiven, normalDensity } from "../statistics/standardNormal.ts";
import type { ScenarioBenefits } from "./scenarioBenefits.ts";

/** Deviations of log y beyond which nothing is told apart: the chance beyond is 3e-14. */
const FAR = 7.5;

/** The price factor's mean, and between what it lies but for a chance of 3e-14 on either side. */
export interface FactorSpan {
  readonly mean: number;
  readonly lowest: number;
  readonly highest: number;
}

export function factorSpan(factor: LogNormal): FactorSpan {
  const { logMedian, logSd } = factor;
  return {
    mean: logNormalMean(factor),
    lowest: exp(logMedian - FAR * logSd),
    // Weighted with y itself, the log-normal's log is centred one logSd higher.
    highest: exp(logMedian + (FAR + logSd) * logSd),
  };
}

/**
 * Mean over y of what one scenario's best course brings beyond the course best on average. Within a scenario the best course is the upper envelope of lines
 * in y; what a line adds beyond the point k where it takes over is its rise times E[(y - k)+] = E[y] Phi(s - z) - k Phi(-z), z the normal score of k and s the
 * log's deviation. Allocates nothing.
 * @param span of y
 * @param from where the scenario's figures start
 * @param best place of the course best on average
 * @param chosen place of the course that counts as the best where courses tie
 * @param weight of the scenario, the weights summing to 1
 * @param shares added to: the chance of each course to be the best, times the weight
 */
export function regretOverPrices(
  { courses, slopes, offsets, priceFactor: { logMedian, logSd } }: ScenarioBenefits,
  { mean, lowest, highest }: FactorSpan,
  from: number,
  best: number,
  chosen: number,
  weight: number,
  shares: Float64Array,
): Money {
  // Who leads at the lowest y; among equals the steepest, among the same line the chosen one.
  let line = chosen;
  for (let course = 0; course < courses; course++) {
    const ahead =
      slopes[from + course]! * lowest +
      offsets[from + course]! -
      (slopes[from + line]! * lowest + offsets[from + line]!);
    if (ahead > 0 || (ahead === 0 && slopes[from + course]! > slopes[from + line]!)) line = course;
  }
  let regret =
    (slopes[from + line]! - slopes[from + best]!) * mean + (offsets[from + line]! - offsets[from + best]!);
  let above = 1;
  for (;;) {
    let next = -1;
    let gap = 1;
    let rise = 0;
    const slope = slopes[from + line]!;
    const offset = offsets[from + line]!;
    for (let course = 0; course < courses; course++) {
      const steeper = slopes[from + course]! - slope;
      if (!(steeper > 0)) continue;
      const behind = offset - offsets[from + course]!;
      // It crosses at behind / steeper: compared by products, which divide nothing. Where several cross at once the steepest goes on.
      const sooner = gap * steeper - behind * rise;
      if (sooner > 0 || (sooner === 0 && (steeper > rise || (steeper === rise && course === chosen)))) {
        next = course;
        gap = behind;
        rise = steeper;
      }
    }
    if (next < 0) break;
    // A leader told apart by rounding alone would be overtaken below the lowest.
    const takesOver = Math.max(lowest, gap / rise);
    if (takesOver > highest) break;
    const z = (log(takesOver) - logMedian) / logSd;
    const density = normalDensity(z);
    const beyond = normalCdfGiven(-z, density);
    // The density at z - s is k / E[y] times that at z.
    const meanBeyond = mean * normalCdfGiven(logSd - z, (takesOver * density) / mean);
    regret += rise * (meanBeyond - takesOver * beyond);
    shares[line]! += weight * (above - beyond);
    above = beyond;
    line = next;
  }
  shares[line]! += weight * above;
  return regret;
}

/** The same where y is known: logSd 0. */
export function regretAtPrice(
  { courses, slopes, offsets }: ScenarioBenefits,
  { mean: y }: FactorSpan,
  from: number,
  best: number,
  chosen: number,
  weight: number,
  shares: Float64Array,
): Money {
  let line = chosen;
  for (let course = 0; course < courses; course++)
    if (
      slopes[from + course]! * y + offsets[from + course]! >
      slopes[from + line]! * y + offsets[from + line]!
    )
      line = course;
  shares[line]! += weight;
  return (slopes[from + line]! - slopes[from + best]!) * y + (offsets[from + line]! - offsets[from + best]!);
}
