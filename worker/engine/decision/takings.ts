import type { Money } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { expm1 } from "../statistics/elementary/expm1.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";

/**
 * What reaches the user on average over a course's branches where the price residual that all of them share stands at a normal score.
 * @param z normal score of the shared residual; null: averaged over it
 */
export function takingsAt(branches: readonly Branch[], z: number | null): Money {
  let takings = 0;
  for (const { chance, price, share } of branches) {
    if (!price) continue;
    const rate = z === null ? logNormalMean(price) : exp(price.logMedian + price.logSd * z);
    takings += chance * share * rate;
  }
  return takings;
}

/**
 * Variance of these takings over the shared residual: prices exp(m + s z) of two branches have the covariance E E' (exp(s s') - 1), E and E' their means. Where
 * all branches have one s it is (mean takings)^2 (exp(s^2) - 1).
 */
export function salePriceVariance(branches: readonly Branch[]): number {
  const sold = branches.flatMap(({ chance, price, share }) =>
    price ? [{ takings: chance * share * logNormalMean(price), logSd: price.logSd }] : [],
  );
  let variance = 0;
  for (const one of sold)
    for (const other of sold) variance += one.takings * other.takings * expm1(one.logSd * other.logSd);
  return variance;
}
