import { describe, expect, test } from "vitest";
import { studentTQuantile } from "../../../worker/engine/statistics/studentT.ts";
import { foldsOf } from "./folds.ts";
import { BOSTON, type RealPrices, windsor } from "./realPrices.ts";
import { weakRegression } from "./weakRegression.ts";

const FOLDS = 10;
const SEED = 20_261_125;

/** Share of prices, each predicted without its fold, that lie in their 80 % interval. */
function coverage(prices: RealPrices, seed: number): number {
  let inside = 0;
  for (const { learned, held } of foldsOf(prices.y.length, FOLDS, seed)) {
    const predicted = weakRegression(prices, learned);
    for (const row of held) {
      const { location, scale, degreesOfFreedom } = predicted(row);
      const reach = scale * studentTQuantile(0.9, degreesOfFreedom);
      if (Math.abs(prices.y[row]! - location) <= reach) inside += 1;
    }
  }
  return inside / prices.y.length;
}

describe("ten folds of real prices: 75 to 85 in 100 lie in the band that was meant for 80 (SOURCE.md)", () => {
  // Prices of the inner tracts scatter about twice as much as the others'. With one spread for all, 85 to 87 in 100 lie inside: the regression then learns
  // a spread too wide for most and too narrow for those. The value model's collectable bikes are the same matter.
  test("Boston", () => {
    const share = coverage(BOSTON, SEED);
    expect(share).toBeGreaterThanOrEqual(0.75);
    expect(share).toBeLessThanOrEqual(0.85);
  });

  const houses = windsor();
  test.skipIf(houses === null)(`Windsor${houses ? "" : ": data not at hand"}`, () => {
    const share = coverage(houses!, SEED);
    expect(share).toBeGreaterThanOrEqual(0.75);
    expect(share).toBeLessThanOrEqual(0.85);
  });

  test("every row is held out once, and never learned from in its own fold", () => {
    const folds = foldsOf(57, FOLDS, SEED);
    const held = folds.flatMap((fold) => fold.held);
    expect(held.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 57 }, (_, row) => row));
    for (const fold of folds) expect(fold.learned.filter((row) => fold.held.includes(row))).toEqual([]);
  });
});
