import type { RandomNumbers } from "../../../data/scripts/randomNumbers.ts";
import type { ConjugateRegression } from "../../../worker/engine/statistics/conjugateRegression.ts";
import { solveUpper } from "../../../worker/engine/statistics/upperTriangle.ts";

/** Standard normal draws, two at a time (Box & Muller 1958). */
export function standardNormals(random: RandomNumbers): () => number {
  let kept: number | null = null;
  return () => {
    if (kept !== null) {
      const one = kept;
      kept = null;
      return one;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/**
 * Coefficients and standard deviation drawn from a belief whose degrees of freedom 2a are a whole number: s^2 = 2b / chi^2, the chi^2 of 2a degrees of
 * freedom; coefficients R^-1 (R m + s z), whose covariance is s^2 (R'R)^-1.
 */
export function drawnFrom(
  belief: ConjugateRegression,
  random: RandomNumbers,
  normal: () => number = standardNormals(random),
): { readonly coefficients: Float64Array; readonly sd: number } {
  const degreesOfFreedom = Math.round(2 * belief.shape);
  let chiSquared = 0;
  for (let draw = 0; draw < degreesOfFreedom; draw++) chiSquared += normal() ** 2;
  const sd = Math.sqrt((2 * belief.scale) / chiSquared);
  const coefficients = solveUpper(
    belief,
    belief.rotated.map((value) => value + sd * normal()),
  );
  return { coefficients, sd };
}
