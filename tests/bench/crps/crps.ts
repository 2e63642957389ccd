import { logGamma, logGammaDrop } from "../../../worker/engine/statistics/logGamma.ts";
import { normalCdf } from "../../../worker/engine/statistics/standardNormal.ts";
import { studentTCdf, studentTDensity } from "../../../worker/engine/statistics/studentT.ts";

/**
 * Continuous ranked probability score of a normal forecast: the integral of (F(x) - 1 where x >= y)^2, in the unit of y; least is best, and a forecast
 * without spread scores its absolute error. Gneiting & Raftery, J. American Statistical Association 102 (2007) 359-378, eq. 21.
 */
export function crpsNormal(y: number, mean: number, sd: number): number {
  const z = (y - mean) / sd;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return sd * (z * (2 * normalCdf(z) - 1) + 2 * density - 1 / Math.sqrt(Math.PI));
}

/** The same of Student's t moved and scaled, of more than one degree of freedom (Jordan, Krüger & Lerch, J. Statistical Software 90(12), 2019, appendix A). */
export function crpsStudentT(y: number, location: number, scale: number, degreesOfFreedom: number): number {
  const v = degreesOfFreedom;
  const z = (y - location) / scale;
  const logBeta = (a: number) => logGamma(0.5) + logGammaDrop(a, 0.5);
  // B(1/2, v - 1/2) / B(1/2, v/2)^2.
  const ratio = Math.exp(logBeta(v - 0.5) - 2 * logBeta(v / 2));
  return (
    scale *
    (z * (2 * studentTCdf(z, v) - 1) +
      (2 * studentTDensity(z, v) * (v + z * z)) / (v - 1) -
      (2 * Math.sqrt(v) * ratio) / (v - 1))
  );
}

/** The same of the empirical distribution of some values: mean distance from y less half the mean distance between two of them (eq. 20 there). */
export function crpsEnsemble(y: number, members: readonly number[]): number {
  const sorted = members.toSorted((a, b) => a - b);
  const count = sorted.length;
  let [distance, between] = [0, 0];
  sorted.forEach((value, rank) => {
    distance += Math.abs(value - y);
    between += (2 * rank + 1 - count) * value;
  });
  return distance / count - between / (count * count);
}
