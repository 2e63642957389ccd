import { expect, test } from "vitest";
import { type GoingRate, tailsOf } from "../../../worker/engine/valuation/goingRate.ts";
import { mixtureBand, valueBand } from "../../../worker/engine/valuation/valueBand.ts";

const around = (median: number): GoingRate => ({
  logMedian: Math.log(median),
  logScale: 0.165,
  logSd: 0.165 * Math.sqrt(12 / 10),
  tails: tailsOf(12),
});
const RIDES = around(200);
const DOES_NOT = around(100);

test("the band's middle is the median and its ends are symmetric on the log scale", () => {
  const { p10, p25, p50, p75, p90 } = valueBand(RIDES);
  expect(p50).toBeCloseTo(200, 10);
  expect(p10 * p90).toBeCloseTo(p50 * p50, 6);
  expect(p25 * p75).toBeCloseTo(p50 * p50, 6);
  expect(p10).toBeLessThan(p25);
  expect(p75).toBeLessThan(p90);
});

test("a mixture's band lies between its parts and moves down as the worse one gets likelier", () => {
  let last = mixtureBand(RIDES, DOES_NOT, 0);
  expect(last).toEqual(valueBand(RIDES));
  for (const chance of [0.1, 0.35, 0.5, 0.8, 1]) {
    const band = mixtureBand(RIDES, DOES_NOT, chance);
    for (const point of ["p10", "p25", "p50", "p75", "p90"] as const) {
      expect(band[point]).toBeLessThanOrEqual(last[point]);
      expect(band[point]).toBeGreaterThanOrEqual(valueBand(DOES_NOT)[point] - 1e-9);
    }
    last = band;
  }
  expect(last).toEqual(valueBand(DOES_NOT));
});

test("a mixture of a value with itself is that value", () => {
  const [mixed, plain] = [mixtureBand(RIDES, RIDES, 0.3), valueBand(RIDES)];
  for (const point of ["p10", "p25", "p50", "p75", "p90"] as const)
    expect(mixed[point]).toBeCloseTo(plain[point], 6);
});
