import type { Money, Probability } from "../quantity.ts";
import { type LogNormal, logNormalCdf, logNormalQuantile } from "../statistics/logNormal.ts";
import { mixtureQuantile } from "../statistics/mixtureQuantile.ts";

/** Going rate before haggling, fee and post: its 10, 25, 50, 75 and 90 % points. */
export interface ValueBand {
  readonly p10: Money;
  readonly p25: Money;
  readonly p50: Money;
  readonly p75: Money;
  readonly p90: Money;
}

/** Band of a log-normal going rate. */
export function valueBand(value: LogNormal): ValueBand {
  return band((probability) => logNormalQuantile(value, probability));
}

/**
 * Band of a bike that may turn out either of two ways, such as riding or not riding.
 * @param chance of the second way, 0 to 1
 */
export function mixtureBand(one: LogNormal, other: LogNormal, chance: Probability): ValueBand {
  if (chance === 0) return valueBand(one);
  if (chance === 1) return valueBand(other);
  const cdf = (x: number) => (1 - chance) * logNormalCdf(one, x) + chance * logNormalCdf(other, x);
  return band((probability) => {
    const ends = [logNormalQuantile(one, probability), logNormalQuantile(other, probability)] as const;
    const [low, high] = [Math.min(...ends), Math.max(...ends)];
    return low === high ? low : mixtureQuantile(cdf, probability, low, high);
  });
}

function band(quantile: (probability: number) => number): ValueBand {
  return {
    p10: quantile(0.1),
    p25: quantile(0.25),
    p50: quantile(0.5),
    p75: quantile(0.75),
    p90: quantile(0.9),
  };
}
