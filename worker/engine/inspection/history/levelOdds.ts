import { exp } from "../../statistics/elementary/exp.ts";
import { CLASS_COUNT } from "./factor.ts";

const MOST_STEPS = 100;
/** What the sum over the classes may be off by rounding alone. */
const ROUNDING = 8 * Number.EPSILON;

/**
 * The odds u of a level or worse in a class that nothing shifts, such that the average over the classes is what it has to be:
 * sum of weight x shift u / (1 + shift u) = chance. In logarithms the sum is an average of logistic curves, so it rises everywhere and the root
 * lies between chance's own odds over the largest and the smallest shift. Newton's step in log u, halved into the bracket where it leaves it,
 * until the sum is right but for rounding.
 * @param chance from 0 to 1; 0 and 1 give 0 and infinity
 * @param weights of the classes, summing to 1
 * @param shifts the odds multiplier of each class, above 0
 */
export function levelOdds(chance: number, weights: Float64Array, shifts: Float64Array): number {
  if (chance <= 0) return 0;
  const own = chance / (1 - chance);
  if (!(chance < 1) || own === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
  let least = shifts[0]!;
  let most = least;
  for (let z = 1; z < CLASS_COUNT; z++) {
    least = Math.min(least, shifts[z]!);
    most = Math.max(most, shifts[z]!);
  }
  let low = own / most;
  let high = own / least;
  let odds = Math.sqrt(low) * Math.sqrt(high);
  for (let step = 0; step < MOST_STEPS && low < high; step++) {
    let tail = 0;
    let slope = 0;
    for (let z = 0; z < CLASS_COUNT; z++) {
      const shifted = shifts[z]! * odds;
      const above = shifted / (1 + shifted);
      tail += weights[z]! * above;
      slope += (weights[z]! * above) / (1 + shifted);
    }
    const excess = tail - chance;
    if (excess > 0) high = odds;
    else low = odds;
    let next = odds * exp(-excess / slope);
    if (!(next >= low && next <= high)) next = Math.sqrt(low) * Math.sqrt(high);
    if (Math.abs(excess) <= ROUNDING * chance) return next;
    odds = next;
  }
  return odds;
}
