import { expect, test } from "vitest";
import { gaussHermite } from "../../../worker/engine/statistics/gaussHermite.ts";
import {
  logNormalCdf,
  logNormalDensity,
  logNormalFromMean,
  logNormalFromMedian,
  logNormalMean,
  logNormalQuantile,
  logNormalSd,
} from "../../../worker/engine/statistics/logNormal.ts";

test("mean and standard deviation come back as they were given", () => {
  const price = logNormalFromMean(120, 45);
  expect(logNormalMean(price)).toBeCloseTo(120, 11);
  expect(logNormalSd(price)).toBeCloseTo(45, 11);
});

test("the mean is the integral over normal quantiles", () => {
  const price = logNormalFromMedian(80, 0.3);
  const { nodes, weights } = gaussHermite(20);
  const integral = nodes.reduce(
    (sum, node, i) => sum + weights[i]! * Math.exp(price.logMedian + 0.3 * node),
    0,
  );
  expect(logNormalMean(price)).toBeCloseTo(integral, 10);
});

test("half of the prices lie below the median, none below nought", () => {
  const price = logNormalFromMedian(80, 0.3);
  expect(logNormalCdf(price, 80)).toBeCloseTo(0.5, 15);
  expect([logNormalCdf(price, 0), logNormalCdf(price, -5), logNormalDensity(price, -5)]).toEqual([0, 0, 0]);
  const step = 1e-3;
  const slope = (logNormalCdf(price, 70 + step) - logNormalCdf(price, 70 - step)) / (2 * step);
  expect(logNormalDensity(price, 70)).toBeCloseTo(slope, 8);
});

test("without spread it is a fixed number", () => {
  const price = logNormalFromMean(50, 0);
  expect(logNormalQuantile(price, 0.1)).toBeCloseTo(50, 12);
  expect([logNormalCdf(price, 49.9), logNormalCdf(price, 50.1)]).toEqual([0, 1]);
});

test("a mean or median that is not above nought is refused by name", () => {
  expect(() => logNormalFromMean(0, 1)).toThrow("mean requires a number above 0, got 0");
  expect(() => logNormalFromMean(1, -1)).toThrow("sd requires a number of at least 0, got -1");
  expect(() => logNormalFromMedian(-1, 1)).toThrow("median requires");
  expect(() => logNormalFromMedian(1, Number.NaN)).toThrow("logSd requires");
});
