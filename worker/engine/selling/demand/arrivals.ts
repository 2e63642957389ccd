import { log } from "../../statistics/elementary/log.ts";
import { normalCdfGiven, normalDensity } from "../../statistics/standardNormal.ts";
import type { GoingRates } from "./goingRates.ts";

/** Buyers a week who take a price, by node, with their slopes by price; written into by `Arrivals.at`. */
export interface BuyingRates {
  readonly rate: Float64Array;
  readonly slope: Float64Array;
}

/** How many buyers a week would take a price: a Poisson process whose rate falls with the price. */
export interface Arrivals {
  readonly nodes: number;
  /** @param week 0 is the first */
  readonly at: (week: number, price: number, buying: BuyingRates) => void;
}

/** What interested buyers would pay. */
export interface Willingness {
  /** Log of the median buyer's willingness, money in hand, over the going rate. */
  readonly logCentre: number;
  /** Standard deviation of its logarithm among buyers. */
  readonly logSd: number;
}

/** What the season makes of a week. */
export interface SeasonWeek {
  /** Interested buyers. */
  readonly arrivals: number;
  /** Log of the going rate over that of the first week. */
  readonly logRate: number;
}

/**
 * Interested buyers come as a Poisson process, and each takes the price if their willingness to pay, log-normal about a share of the going rate, is at least
 * that: buyers who take the price a come at the rate lambda (1 - Phi((ln a - ln V - centre) / s)). Prices are money in hand, after haggling.
 */
export function poissonBuyers(
  { logRates }: GoingRates,
  { logCentre, logSd }: Willingness,
  season: readonly SeasonWeek[],
): Arrivals {
  const nodes = logRates.length;
  return {
    nodes,
    at: (week, price, { rate, slope }) => {
      const { arrivals, logRate } = season[week]!;
      const level = log(price) - logRate - logCentre;
      const steepness = -arrivals / (logSd * price);
      for (let node = 0; node < nodes; node++) {
        const z = (level - logRates[node]!) / logSd;
        const density = normalDensity(z);
        rate[node] = arrivals * normalCdfGiven(-z, density);
        slope[node] = steepness * density;
      }
    },
  };
}

/** Room for the rates of one week. */
export function buyingRates(nodes: number): BuyingRates {
  return { rate: new Float64Array(nodes), slope: new Float64Array(nodes) };
}
