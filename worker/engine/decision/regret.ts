import type { Money } from "../quantity.ts";
import { normalCdfGiven, normalDensity } from "../statistics/standardNormal.ts";
import type { ScenarioBenefits } from "./scenarioBenefits.ts";

/**
 * Mean over y of what one scenario's best course brings beyond the course best on average. Within a scenario the best course is the upper envelope of lines
 * in y; what a line adds beyond the point k where it takes over is its rise times E[(y - k)+] = E[y] Phi(s - z) - k Phi(-z), z the normal score of k and s the
 * log's deviation. Allocates nothing.
 * @param from where the scenario's figures start
 * @param best place of the course best on average
 * @param chosen place of the course that counts as the best where courses tie
 * @param mean E[y]
 * @param weight of the scenario, the weights summing to 1
 * @param shares added to: the chance of each course to be the best, times the weight
 */
export function regretOverPrices(
  { courses, slopes, offsets, priceFactor: { logMedian, logSd } }: ScenarioBenefits,
  from: number,
  best: number,
  chosen: number,
  mean: number,
  weight: number,
  shares: Float64Array,
): Money {
  // As y nears 0 the highest offset leads; among equals the steepest, among the same line the chosen one.
  let line = chosen;
  for (let course = 0; course < courses; course++) {
    const ahead = offsets[from + course]! - offsets[from + line]!;
    if (ahead > 0 || (ahead === 0 && slopes[from + course]! > slopes[from + line]!)) line = course;
  }
  let regret =
    (slopes[from + line]! - slopes[from + best]!) * mean + (offsets[from + line]! - offsets[from + best]!);
  let above = 1;
  for (;;) {
    let next = -1;
    let takesOver = Infinity;
    const slope = slopes[from + line]!;
    const offset = offsets[from + line]!;
    for (let course = 0; course < courses; course++) {
      const rise = slopes[from + course]! - slope;
      if (!(rise > 0)) continue;
      const crossing = (offset - offsets[from + course]!) / rise;
      if (crossing > takesOver) continue;
      const further = next < 0 ? 1 : slopes[from + course]! - slopes[from + next]!;
      if (crossing < takesOver || further > 0 || (further === 0 && course === chosen)) {
        next = course;
        takesOver = crossing;
      }
    }
    if (next < 0) break;
    const z = (Math.log(takesOver) - logMedian) / logSd;
    const density = normalDensity(z);
    const beyond = normalCdfGiven(-z, density);
    // The density at z - s is k / E[y] times that at z.
    const meanBeyond = mean * normalCdfGiven(logSd - z, (takesOver * density) / mean);
    regret += (slopes[from + next]! - slope) * (meanBeyond - takesOver * beyond);
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
  from: number,
  best: number,
  chosen: number,
  y: number,
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
