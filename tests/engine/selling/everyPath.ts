import type { PathProblem } from "../../../worker/engine/selling/demand/pricePath.ts";
import { weekFigures } from "../../../worker/engine/selling/demand/saleWeek.ts";

/**
 * The highest worth over every path of prices from a list and every week to give up, one by one: for small horizons. Shares with the engine what one week at a price
 * comes to, and nothing of the search.
 */
export function bestOfEveryPath(
  { weeks, weights, sale, fallback }: PathProblem,
  prices: readonly number[],
): { readonly worth: number; readonly prices: readonly number[] } {
  const nodes = weights.length;
  const figures = Array.from({ length: weeks }, (_, week) =>
    prices.map((price) => {
      const one = weekFigures(nodes);
      sale.at(week, price, one);
      return one;
    }),
  );
  let best = { worth: Number.NEGATIVE_INFINITY, prices: [] as readonly number[] };
  const walk = (week: number, reach: Float64Array, gained: number, chosen: readonly number[]) => {
    if (week > 0) {
      const worth = reach.reduce((sum, one, node) => sum + one * fallback[week * nodes + node]!, gained);
      if (worth > best.worth) best = { worth, prices: chosen };
    }
    if (week === weeks) return;
    prices.forEach((price, at) => {
      const { gain, left } = figures[week]![at]!;
      const now = reach.reduce((sum, one, node) => sum + one * gain[node]!, gained);
      walk(
        week + 1,
        reach.map((one, node) => one * left[node]!),
        now,
        [...chosen, price],
      );
    });
  };
  walk(0, weights, 0, []);
  return best;
}
