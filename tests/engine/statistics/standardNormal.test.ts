import fc from "fast-check";
import { expect, test } from "vitest";
import {
  normalCdf,
  normalCdfGiven,
  normalDensity,
  normalQuantile,
} from "../../../worker/engine/statistics/standardNormal.ts";

test("quantile and cdf undo each other", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-300, max: 0.999, noNaN: true }), (probability) => {
      const z = normalQuantile(probability);
      // Rounding z by one part in 4.5e15 moves the cdf by z^2 as much, relatively.
      expect(Math.abs(normalCdf(z) / probability - 1)).toBeLessThan(16e-16 * (4 + z * z));
    }),
  );
});

test("the cdf with the density at hand is the same to a few roundings", () => {
  fc.assert(
    fc.property(fc.double({ min: -37, max: 37, noNaN: true }), (z) => {
      expect(Math.abs(normalCdfGiven(z, normalDensity(z)) / normalCdf(z) - 1)).toBeLessThan(
        4e-16 * (4 + z * z),
      );
    }),
  );
  expect([normalCdfGiven(Number.NEGATIVE_INFINITY, 0), normalCdfGiven(Number.POSITIVE_INFINITY, 0)]).toEqual([
    0, 1,
  ]);
});

test("the cdf never falls and is symmetric about nought", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -40, max: 40, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (z, step) => {
        expect(normalCdf(z + step)).toBeGreaterThanOrEqual(normalCdf(z));
        expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 15);
      },
    ),
  );
});

test("the density is the cdf's slope", () => {
  for (const z of [-2.3, -0.4, 0, 0.67448975, 1.9]) {
    const step = 1e-4;
    expect((normalCdf(z + step) - normalCdf(z - step)) / (2 * step)).toBeCloseTo(normalDensity(z), 8);
  }
});

test("the ends are the infinities, and what is no probability is refused", () => {
  expect([normalQuantile(0), normalQuantile(1)]).toEqual([
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ]);
  expect([normalCdf(Number.NEGATIVE_INFINITY), normalCdf(Number.POSITIVE_INFINITY)]).toEqual([0, 1]);
  expect(() => normalQuantile(1.2)).toThrow("probability requires a number from 0 to 1, got 1.2");
  expect(() => normalQuantile(Number.NaN)).toThrow("got NaN");
});
