import type { Money, Probability } from "../../quantity.ts";
import { expm1 } from "../../statistics/elementary/expm1.ts";
import { weightedQuantile } from "../../statistics/weightedQuantile.ts";
import { type Arrivals, buyingRates } from "./arrivals.ts";

/** A path of prices whose outcome is asked for. Nothing is discounted. */
export interface Forecasting {
  readonly arrivals: Arrivals;
  readonly weights: Float64Array;
  /** Money in hand that buyers are asked for, week by week; one entry for each week before the fallback. */
  readonly prices: Float64Array;
  /** What is left of a price after fees. */
  readonly received: (price: Money) => Money;
  /** What the fallback brings after the last of these weeks, by node. */
  readonly fallback: Float64Array;
}

/** What comes of a path of prices. */
export interface SaleForecast {
  /** Chance that it is sold by the end of each week. */
  readonly chanceSold: readonly Probability[];
  readonly chanceUnsold: Probability;
  readonly expectedTakings: Money;
  readonly takings: Quantiles;
  readonly expectedWeeks: number;
  readonly weeks: Quantiles;
  /** What the fallback brings where it comes to that. */
  readonly expectedFallback: Money;
}

interface Quantiles {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** Prices that are asked, seen by the weeks alone. */
type Asking = Pick<Forecasting, "arrivals" | "weights" | "prices">;

/** Week by week, how a path of prices ends. */
interface Endings {
  /** Chance that it is sold in each week. */
  readonly chances: readonly Probability[];
  /** By node: weight of the node times the chance that it is unsold in the end. */
  readonly unsold: Float64Array;
  readonly expectedWeeks: number;
}

/**
 * In a week in which buyers who take the price come at the rate H, it is sold with chance 1 - exp(-H) and stands on average (1 - exp(-H)) / H of the week; by
 * node, the chance to be unsold multiplies up.
 */
export function saleEndings({ arrivals, weights, prices }: Asking): Endings {
  const unsold = weights.slice();
  const buying = buyingRates(weights.length);
  const chances = new Array<Probability>(prices.length);
  let expectedWeeks = 0;
  for (let week = 0; week < prices.length; week++) {
    arrivals.at(week, prices[week]!, buying);
    let now = 0;
    for (let node = 0; node < unsold.length; node++) {
      const rate = buying.rate[node]!;
      const chance = -expm1(-rate) * unsold[node]!;
      expectedWeeks += rate > 0 ? chance / rate : unsold[node]!;
      unsold[node]! -= chance;
      now += chance;
    }
    chances[week] = now;
  }
  return { chances, unsold, expectedWeeks };
}

/** Chances, weeks and takings of a path. */
export function forecastSale(forecasting: Forecasting): SaleForecast {
  const { weights, prices, received, fallback } = forecasting;
  const { chances, unsold, expectedWeeks } = saleEndings(forecasting);
  let sold = 0;
  const chanceSold = chances.map((now) => {
    sold += now;
    return Math.min(1, sold);
  });
  const amounts = Array.from(prices, received);
  // The weights sum to 1 but for rounding.
  const chanceUnsold = Math.min(
    1,
    unsold.reduce((sum, one) => sum + one, 0),
  );
  const fallen = unsold.reduce((sum, one, node) => sum + one * fallback[node]!, 0);
  const outcomes = [...amounts, ...fallback];
  const odds = [...chances, ...unsold];
  return {
    chanceSold,
    chanceUnsold,
    expectedTakings: amounts.reduce((sum, amount, week) => sum + amount * chances[week]!, fallen),
    takings: quantiles((probability) => weightedQuantile(outcomes, odds, probability)),
    expectedWeeks,
    weeks: quantiles((probability) => weekSold(chanceSold, probability)),
    expectedFallback:
      chanceUnsold > 0
        ? fallen / chanceUnsold
        : fallback.reduce((sum, one, node) => sum + one * weights[node]!, 0),
  };
}

function quantiles(at: (probability: Probability) => number): Quantiles {
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

/** Weeks by which it is gone with a chance, evenly within a week; the last where it goes for the fallback then. */
function weekSold(chanceSold: readonly Probability[], probability: Probability): number {
  const week = chanceSold.findIndex((sold) => sold >= probability);
  if (week < 0) return chanceSold.length;
  const before = week === 0 ? 0 : chanceSold[week - 1]!;
  return week + (probability - before) / (chanceSold[week]! - before);
}
