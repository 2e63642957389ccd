import { expect, test } from "vitest";
import { logNormalFromMedian } from "../../../worker/engine/statistics/logNormal.ts";
import { mixtureBand, valueBand } from "../../../worker/engine/valuation/valueBand.ts";

const RIDES = logNormalFromMedian(200, 0.165);
const DOES_NOT = logNormalFromMedian(100, 0.165);

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
  expect(mixtureBand(RIDES, RIDES, 0.3)).toEqual(valueBand(RIDES));
});
