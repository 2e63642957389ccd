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
import { logNormalPartialMean } from "./logNormalPartialMean.ts";

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

test("the mean over a part is the integral of x times density there", () => {
  const price = logNormalFromMedian(80, 0.3);
  const byGrid = (low: number, high: number) => {
    let sum = 0;
    const steps = 20_000;
    for (let i = 0; i < steps; i++) {
      const x = low + ((i + 0.5) * (high - low)) / steps;
      sum += (x * logNormalDensity(price, x) * (high - low)) / steps;
    }
    return sum;
  };
  for (const [low, high] of [
    [0, 60],
    [60, 95],
    [95, 400],
    [300, 400],
  ] as const) {
    const part = logNormalPartialMean(price, low, high);
    expect(part / byGrid(low, high)).toBeCloseTo(1, 6);
  }
  const whole = logNormalPartialMean(price, -5, 90) + logNormalPartialMean(price, 90, Infinity);
  expect(whole).toBeCloseTo(logNormalMean(price), 12);
  const fixed = logNormalFromMedian(80, 0);
  const parts = [0, 79.9, 80.1].map((low) => logNormalPartialMean(fixed, low, low + 79.95));
  expect(parts[0]).toBe(0);
  expect(parts[1]).toBeCloseTo(80, 12);
  expect(parts[2]).toBe(0);
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
