import type { SellingPlan } from "../../../worker/engine/selling/sellingPlan.ts";
import { Chance } from "../walker/chance.ts";

/** A market to play sales in. */
export interface PlayedMarket {
  /** Log of the median going rate before haggling, with its standard deviation below and above. */
  readonly logMedian: number;
  readonly sdBelow: number;
  readonly sdAbove: number;
  readonly arrivalsPerWeek: number;
  /** Share usually talked off, and the median buyer's willingness as a share of the going rate. */
  readonly usualHaggling: number;
  readonly centre: number;
  readonly logSd: number;
  /** Share of the going rate that the fallback brings. */
  readonly quickSale: number;
}

/** What came of many sales. */
export interface PlayedSales {
  /** Share sold by the end of each week. */
  readonly sold: readonly number[];
  readonly takings: { readonly mean: number; readonly sd: number };
  readonly weeks: { readonly mean: number; readonly sd: number };
}

/**
 * Plays sales by a plan's asking prices, buyer by buyer: a going rate is drawn, buyers come after exponential times, each draws what they would pay, and the first who would
 * pay what is left of the price after haggling has it. Shares nothing with the engine but the plan.
 */
export function playSales(plan: SellingPlan, market: PlayedMarket, count: number, seed: number): PlayedSales {
  const chance = new Chance(seed);
  const sold = plan.path.map(() => 0);
  const takings: number[] = [];
  const weeks: number[] = [];
  for (let sale = 0; sale < count; sale++) {
    const z = chance.normal();
    const rate = Math.exp(market.logMedian + z * (z < 0 ? market.sdBelow : market.sdAbove));
    const middle = Math.log(rate * (1 - market.usualHaggling) * market.centre);
    let time = 0;
    let taken: number | null = null;
    for (;;) {
      time -= Math.log(chance.uniform()) / market.arrivalsPerWeek;
      if (time >= plan.path.length) break;
      const paid = plan.path[Math.floor(time)]!.price * (1 - plan.market.haggling);
      if (middle + market.logSd * chance.normal() < Math.log(paid)) continue;
      taken = paid;
      break;
    }
    takings.push(taken ?? market.quickSale * rate);
    weeks.push(Math.min(time, plan.path.length));
    if (taken !== null) for (let week = Math.floor(time); week < sold.length; week++) sold[week]!++;
  }
  return { sold: sold.map((one) => one / count), takings: meanAndSd(takings), weeks: meanAndSd(weeks) };
}

function meanAndSd(values: readonly number[]): { readonly mean: number; readonly sd: number } {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  const variance = values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1);
  return { mean, sd: Math.sqrt(variance) };
}
