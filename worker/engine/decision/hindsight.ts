import { DomainError } from "../domainError.ts";
import type { Money, Probability } from "../quantity.ts";
import { factorSpan, regretAtPrice, regretOverPrices } from "./regret.ts";
import { type ScenarioBenefits, totalWeight } from "./scenarioBenefits.ts";

/** What knowing everything beforehand would change. */
export interface Hindsight {
  /** Expected net benefit of each course. */
  readonly expected: Float64Array;
  /** Of whoever may choose after everything is known: E[max]. */
  readonly expectedBest: Money;
  /** E[max] - max E: most that any knowledge can be worth, at least 0. */
  readonly perfectInformation: Money;
  /** Chance that a course turns out the best; they sum to 1. */
  readonly shares: Float64Array;
  /** Share of the course chosen. */
  readonly confidence: Probability;
}

/**
 * The expected value of perfect information, about the scenario and the price alike, and the chance that a choice proves right; exact in the price.
 * @param chosen place of the course decided on; where courses tie, it counts as the best
 * @throws DomainError for tables of the wrong size, weights without a positive sum, a figure that is no number
 * Source: Raiffa & Schlaifer, Applied Statistical Decision Theory (1961), chapter 4.
 */
export function withHindsight(scenarios: ScenarioBenefits, chosen: number): Hindsight {
  const total = totalWeight(scenarios, chosen);
  const { courses, weights, priceFactor } = scenarios;
  const span = factorSpan(priceFactor);
  const expected = expectedOf(scenarios, span.mean, total);
  let best = chosen;
  for (let course = 0; course < courses; course++) if (expected[course]! > expected[best]!) best = course;
  const shares = new Float64Array(courses);
  const regretIn = priceFactor.logSd > 0 ? regretOverPrices : regretAtPrice;
  let regret = 0;
  for (let s = 0; s < weights.length; s++) {
    const weight = weights[s]! / total;
    if (weight > 0) regret += weight * regretIn(scenarios, span, s * courses, best, chosen, weight, shares);
  }
  // Rounding may leave a hair below 0, or above 1.
  const perfectInformation = Math.max(0, regret);
  for (let course = 0; course < courses; course++) shares[course] = Math.min(1, Math.max(0, shares[course]!));
  return {
    expected,
    expectedBest: expected[best]! + perfectInformation,
    perfectInformation,
    shares,
    confidence: shares[chosen]!,
  };
}

function expectedOf({ courses, slopes, offsets, weights }: ScenarioBenefits, mean: number, total: number) {
  const expected = new Float64Array(courses);
  for (let s = 0, i = 0; s < weights.length; s++) {
    const weight = weights[s]! / total;
    for (let course = 0; course < courses; course++, i++)
      expected[course]! += weight * (slopes[i]! * mean + offsets[i]!);
  }
  const strange = expected.findIndex((one) => !Number.isFinite(one));
  if (strange >= 0)
    throw new DomainError("out-of-domain", `course ${strange}`, expected[strange], "finite figures");
  return expected;
}
