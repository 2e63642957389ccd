import { randomNumbers } from "../../../data/scripts/randomNumbers.ts";
import { learnFromSales, readComparables } from "../../../worker/engine/valuation/learnFromSales.ts";
import { predict } from "../../../worker/engine/valuation/prediction.ts";
import { valueBand } from "../../../worker/engine/valuation/valueBand.ts";
import type { ValueModel } from "../../../worker/engine/valuation/valueModel.ts";
import { drawMarket } from "./drawnMarket.ts";

/** Shares of drawn sales. */
export interface Coverage {
  /** Between the 10 and 90 % points of the band. */
  readonly inFourFifths: number;
  /** Between the 25 and 75 % points. */
  readonly inHalf: number;
  readonly belowMiddle: number;
}

/** Most comparables; every number from none on comes equally often. */
const MOST_COMPARABLES = 10;

/** How often a sale drawn from the model's own beliefs falls within the band that it is told, after none to ten comparables drawn from the same market. */
export function bandCoverage(model: ValueModel, markets: number, seed: number): Coverage {
  const random = randomNumbers(seed);
  let [inFourFifths, inHalf, belowMiddle] = [0, 0, 0];
  for (let market = 0; market < markets; market++) {
    const count = market % (MOST_COMPARABLES + 1);
    const { find, comparables, reading, logPrice } = drawMarket(model, random, count);
    const belief = learnFromSales(model, readComparables(model, comparables, reading));
    const band = valueBand(predict(belief, find));
    const price = Math.exp(logPrice);
    if (price >= band.p10 && price <= band.p90) inFourFifths += 1;
    if (price >= band.p25 && price <= band.p75) inHalf += 1;
    if (price < band.p50) belowMiddle += 1;
  }
  return {
    inFourFifths: inFourFifths / markets,
    inHalf: inHalf / markets,
    belowMiddle: belowMiddle / markets,
  };
}

/** Four standard errors of a share of so many draws. */
export function allowed(share: number, draws: number): number {
  return 4 * Math.sqrt((share * (1 - share)) / draws);
}
