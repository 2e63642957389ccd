import { DomainError } from "../domainError.ts";
import type { LogNormal } from "../statistics/logNormal.ts";

/**
 * What may be the case, and what each open course would then bring: net benefit slope x y + offset, where y is the price factor that all states of one find
 * share. Figures of scenario s and course a stand at [s x courses + a].
 */
export interface ScenarioBenefits {
  readonly courses: number;
  /** Takings for each unit of the price factor: 0 where nothing is sold. */
  readonly slopes: Float64Array;
  /** What does not depend on the price: outlay and time at the goal, below 0. */
  readonly offsets: Float64Array;
  /** One for each scenario, at least 0; only their proportions count. */
  readonly weights: Float64Array;
  /** y, independent of the scenario; logSd 0 where it is known. */
  readonly priceFactor: LogNormal;
}

/**
 * Sum of the weights.
 * @param chosen place of a course
 * @throws DomainError for tables of the wrong size, weights without a positive sum, a course that is not there
 */
export function totalWeight(
  { courses, slopes, offsets, weights, priceFactor }: ScenarioBenefits,
  chosen: number,
): number {
  const size = courses * weights.length;
  if (slopes.length !== size)
    throw new DomainError("out-of-domain", "slopes", slopes.length, `${size} figures`);
  if (offsets.length !== size)
    throw new DomainError("out-of-domain", "offsets", offsets.length, `${size} figures`);
  if (!(Number.isInteger(chosen) && chosen >= 0 && chosen < courses))
    throw new DomainError("out-of-domain", "chosen", chosen, `the place of one of ${courses} courses`);
  if (!(priceFactor.logSd >= 0))
    throw new DomainError("out-of-domain", "logSd", priceFactor.logSd, "a number of at least 0");
  const total = weights.reduce((sum, weight) => (weight >= 0 ? sum + weight : Number.NaN), 0);
  if (!(total > 0 && total < Infinity))
    throw new DomainError("out-of-domain", "weights", total, "numbers of at least 0 with a positive sum");
  return total;
}
