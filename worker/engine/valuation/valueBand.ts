import type { Money, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { type LocalDistribution, risingQuantiles } from "../statistics/risingQuantiles.ts";
import { type GoingRate, goingRateAt } from "./goingRate.ts";

/** Going rate before haggling, fee and post: its 10, 25, 50, 75 and 90 % points. */
export interface ValueBand {
  readonly p10: Money;
  readonly p25: Money;
  readonly p50: Money;
  readonly p75: Money;
  readonly p90: Money;
}

/** Band of a going rate: quantiles of Student's t in its log. */
export function valueBand({ logMedian, logScale, tails }: GoingRate): ValueBand {
  const at = (t: number) => exp(logMedian + t * logScale);
  return { p10: at(-tails.p90), p25: at(-tails.p75), p50: at(0), p75: at(tails.p75), p90: at(tails.p90) };
}

/**
 * Band of a bike that may turn out either of two ways, such as riding or not riding.
 * @param chance of the second way, 0 to 1
 */
export function mixtureBand(one: GoingRate, other: GoingRate, chance: Probability): ValueBand {
  const [first, second] = [valueBand(one), valueBand(other)];
  if (chance === 0) return first;
  if (chance === 1) return second;
  const at = (logPrice: number): LocalDistribution => {
    const [a, b] = [goingRateAt(one, logPrice), goingRateAt(other, logPrice)];
    const mixed = (part: keyof LocalDistribution) => (1 - chance) * a[part] + chance * b[part];
    return { below: mixed("below"), density: mixed("density"), slope: mixed("slope") };
  };
  // Both are below the probability at the lower of their own quantiles, and above it at the higher.
  const low = log(Math.min(first.p10, second.p10)) - SLACK;
  const high = log(Math.max(first.p90, second.p90)) + SLACK;
  const guess = (1 - chance) * log(first.p10) + chance * log(second.p10);
  const [p10, p25, p50, p75, p90] = risingQuantiles({ at, low, high, guess }, POINTS, LOG_TOLERANCE).map(
    exp,
  ) as [Money, Money, Money, Money, Money];
  return { p10, p25, p50, p75, p90 };
}

const POINTS = [0.1, 0.25, 0.5, 0.75, 0.9];
/** A thousandth of a millionth of the price. */
const LOG_TOLERANCE = 1e-9;
/** Keeps a quantile that both ways share inside the bracket. */
const SLACK = 1e-6;
