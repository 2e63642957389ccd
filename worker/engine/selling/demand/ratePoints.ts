import type { Probability } from "../../quantity.ts";
import { exp } from "../../statistics/elementary/exp.ts";
import type { RateBand } from "./goingRates.ts";

/**
 * 10, 50 and 90 % points of a going rate known by many weighted nodes: each node's weight is spread evenly in the logarithm between the middles to its neighbours, so that
 * the points move smoothly with the weights.
 * @param weights sum to 1
 */
export function ratePoints(logRates: Float64Array, weights: Float64Array): RateBand {
  const order = [...logRates.keys()].sort((a, b) => logRates[a]! - logRates[b]!);
  const at = (probability: Probability) => {
    let below = 0;
    for (const [place, node] of order.entries()) {
      const weight = weights[node]!;
      if (below + weight < probability && place < order.length - 1) {
        below += weight;
        continue;
      }
      const here = logRates[node]!;
      const lower = (here + logRates[order[Math.max(0, place - 1)]!]!) / 2;
      const upper = (here + logRates[order[Math.min(order.length - 1, place + 1)]!]!) / 2;
      const share = weight > 0 ? Math.min(1, (probability - below) / weight) : 0;
      return exp(lower + share * (upper - lower));
    }
    return Number.NaN;
  };
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
