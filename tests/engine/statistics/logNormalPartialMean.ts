import { type LogNormal, logNormalCdf, logNormalMean } from "../../../worker/engine/statistics/logNormal.ts";
import { normalCdf } from "../../../worker/engine/statistics/standardNormal.ts";

/**
 * Mean over the part between two bounds, E[Y; low < Y <= high]: mean x (Phi(b) - Phi(a)), where a and b are the bounds' normal scores less logSd. Divided by
 * the chance of that part it is the mean given that Y lies there.
 * @param low, high low <= high; high may be infinite
 */
export function logNormalPartialMean(distribution: LogNormal, low: number, high: number): number {
  const { logMedian, logSd } = distribution;
  const mean = logNormalMean(distribution);
  if (logSd === 0) return mean * (logNormalCdf(distribution, high) - logNormalCdf(distribution, low));
  const score = (x: number) => (x <= 0 ? -Infinity : (Math.log(x) - logMedian) / logSd - logSd);
  const [a, b] = [score(low), score(high)];
  // In the upper tail the difference of the small ends keeps its digits.
  return mean * (a > 0 ? normalCdf(-a) - normalCdf(-b) : normalCdf(b) - normalCdf(a));
}
