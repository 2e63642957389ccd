import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mixtureQuantile } from "../../../worker/engine/statistics/mixtureQuantile.ts";
import { monotoneRoot } from "../../../worker/engine/statistics/monotoneRoot.ts";
import { sampleQuantile } from "../../../worker/engine/statistics/sampleQuantile.ts";
import { normalCdf, normalQuantile } from "../../../worker/engine/statistics/standardNormal.ts";
import { studentTCdf, studentTQuantile } from "../../../worker/engine/statistics/studentT.ts";
import { weightedQuantile } from "../../../worker/engine/statistics/weightedQuantile.ts";

describe("root of a rising function", () => {
  test("is found to ten digits, flat stretches and steep steps included", () => {
    expect(monotoneRoot((x) => x ** 3 - 2, 0, 5)).toBeCloseTo(2 ** (1 / 3), 9);
    expect(monotoneRoot((x) => Math.expm1(50 * (x - 0.3)), 0, 1)).toBeCloseTo(0.3, 9);
    expect(monotoneRoot((x) => (x < 0.7 ? -1 : 1), 0, 1)).toBeCloseTo(0.7, 9);
    expect(monotoneRoot((x) => x, 0, 1)).toBe(0);
  });

  test("outside the bracket is refused", () => {
    expect(() => monotoneRoot((x) => x - 3, 0, 1)).toThrow("bracket requires");
    expect(() => monotoneRoot(() => Number.NaN, 0, 1)).toThrow("bracket requires");
  });
});

describe("quantile of a mixture", () => {
  test("gives back the probability, wherever the first bracket was", () => {
    const cdf = (x: number) => 0.3 * normalCdf(x - 5) + 0.7 * normalCdf((x + 40) / 10);
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        (probability, low) => {
          expect(cdf(mixtureQuantile(cdf, probability, low, low + 1))).toBeCloseTo(probability, 6);
        },
      ),
    );
  });

  test("of one component is that component's", () => {
    expect(mixtureQuantile(normalCdf, 0.9, 0, 1)).toBeCloseTo(normalQuantile(0.9), 9);
    expect(() => mixtureQuantile(normalCdf, 1, 0, 1)).toThrow("probability requires");
  });
});

test("Student's t nears the normal as its degrees of freedom grow, and is mirrored about nought", () => {
  expect(studentTQuantile(0.975, 1e7)).toBeCloseTo(normalQuantile(0.975), 6);
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 0.4999, noNaN: true }),
      fc.double({ min: 0.6, max: 5000, noNaN: true }),
      (probability, degrees) => {
        const t = studentTQuantile(probability, degrees);
        expect(studentTCdf(t, degrees) / probability).toBeCloseTo(1, 10);
        expect(studentTQuantile(1 - probability, degrees) / -t).toBeCloseTo(1, 8);
      },
    ),
  );
  expect(studentTQuantile(0.5, 3)).toBe(0);
  expect(studentTCdf(-1e300, 3)).toBe(0);
  expect(() => studentTCdf(1, 0)).toThrow("degreesOfFreedom requires a number above 0, got 0");
});

describe("quantile of a sample", () => {
  test("ends at the extremes and refuses an empty sample", () => {
    expect(sampleQuantile([3, 5, 9], 0)).toBe(3);
    expect(sampleQuantile([3, 5, 9], 1)).toBe(9);
    expect(sampleQuantile([3], 0.4)).toBe(3);
    expect(() => sampleQuantile([], 0.5)).toThrow("sorted requires at least one number");
    expect(() => sampleQuantile([1], -0.1)).toThrow("probability requires");
  });
});

describe("quantile of weighted values", () => {
  test("is the least value whose weights reach the probability", () => {
    const [values, weights] = [
      [30, 10, 20],
      [0.2, 0.1, 0.7],
    ];
    expect(weightedQuantile(values, weights, 0.1)).toBe(10);
    expect(weightedQuantile(values, weights, 0.11)).toBe(20);
    expect(weightedQuantile(values, weights, 0.8)).toBe(20);
    expect(weightedQuantile(values, weights, 1)).toBe(30);
  });

  test("does not change when all weights are multiplied, and a value of no weight is never it", () => {
    expect(weightedQuantile([1, 2, 3], [0, 5, 5], 0)).toBe(2);
    expect(weightedQuantile([1, 2, 3], [2, 2, 0], 1)).toBe(2);
    expect(weightedQuantile([1, 2, 3], [1e-9, 1e-9, 2e-9], 0.5)).toBe(2);
  });

  test("refuses weights that are none", () => {
    expect(() => weightedQuantile([1], [1, 2], 0.5)).toThrow(
      "weights requires as many entries as values (1), got 2",
    );
    expect(() => weightedQuantile([1, 2], [1, -2], 0.5)).toThrow(
      "weights requires numbers of at least 0, got -2",
    );
    expect(() => weightedQuantile([1], [0], 0.5)).toThrow("weights requires at least one number above 0");
    expect(() => weightedQuantile([1], [1], 2)).toThrow("probability requires");
  });
});
