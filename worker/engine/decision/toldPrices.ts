import type { Probability } from "../quantity.ts";
import { expm1 } from "../statistics/elementary/expm1.ts";
import { log } from "../statistics/elementary/log.ts";
import { cubed, squared } from "../statistics/elementary/powers.ts";
import { type LogNormal, logNormalMean, logNormalSd } from "../statistics/logNormal.ts";
import type { Sale, SkewMoments } from "./branch.ts";
import type { MomentMixture } from "./momentMixture.ts";

/** Share of the takings that is left at least, whatever is told: a price has a logarithm. */
const LEAST_LEFT: Probability = 1e-3;
/** What adds less than this to the margin's skewness moves no quantile by a thousandth of a standard deviation. */
const NO_SKEWNESS = 0.01;

/** A price that what is told may leave, and the money out that comes with it. */
export interface ToldPrice {
  readonly chance: Probability;
  readonly price: LogNormal;
  readonly outlay: SkewMoments;
}

/**
 * What is told to the buyer takes a share of the price: it costs the more, the more the bike would have brought. Two prices, at the two points that have the
 * mean, variance and third moment of what is told (Gauss's rule for them), keep that; money out follows it on its regression line, and what is left of its
 * variance and third moment is the same at both. Where the swing hardly shows in the margin it is counted as money out at one price.
 * @param unseen money out beyond the plan, what is told, and both together
 * @param sale at the price where nothing is told
 * @param variance of the plan's own money out
 */
export function toldPrices(unseen: MomentMixture, sale: Sale, variance: number): readonly ToldPrice[] {
  const { told, toldVariance, toldThird, toldWithMoney } = unseen;
  const takings = sale.share * logNormalMean(sale.price);
  const priceIf = (off: number) => {
    const left = Math.max(LEAST_LEFT, 1 - off / takings);
    return { ...sale.price, logMedian: sale.price.logMedian + log(left) };
  };
  const whole = variance + unseen.variance + squared(sale.share * logNormalSd(sale.price));
  const swing = 6 * takings * expm1(squared(sale.price.logSd)) * toldVariance;
  if (swing <= NO_SKEWNESS * whole * Math.sqrt(whole))
    return [
      {
        chance: 1,
        price: priceIf(told),
        outlay: { mean: unseen.money, variance: unseen.variance, third: unseen.third },
      },
    ];
  const sd = Math.sqrt(toldVariance);
  const skewness = toldThird / cubed(sd);
  const slope = toldWithMoney / toldVariance;
  const left = Math.max(0, unseen.variance - squared(1 + slope) * toldVariance);
  const third = left > 0 ? unseen.third - cubed(1 + slope) * toldThird : 0;
  return [-1, 1].map((side) => {
    const off = (skewness + side * Math.sqrt(squared(skewness) + 4)) / 2;
    return {
      chance: 1 / (1 + squared(off)),
      price: priceIf(told + off * sd),
      outlay: { mean: unseen.money + slope * off * sd, variance: left, third },
    };
  });
}
