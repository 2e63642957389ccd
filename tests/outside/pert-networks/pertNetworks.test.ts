import { describe, expect, test } from "vitest";
import { pertMean, pertSd } from "../../../worker/engine/statistics/pert.ts";
import { normalCdf } from "../../../worker/engine/statistics/standardNormal.ts";

type Estimates = readonly (readonly [a: number, m: number, b: number])[];

function pathOf(estimates: Estimates) {
  const activities = estimates.map(([optimistic, likely, pessimistic]) => ({
    optimistic,
    likely,
    pessimistic,
  }));
  return {
    mean: activities.reduce((sum, activity) => sum + pertMean(activity), 0),
    variance: activities.reduce((sum, activity) => sum + pertSd(activity) ** 2, 0),
  };
}

const TAYLOR: Estimates = [
  [5, 8, 17],
  [3, 5, 7],
  [4, 6, 8],
  [3, 4, 5],
];
const CONSTRUCTION: Estimates = [
  [1, 2, 3],
  [2, 3.5, 8],
  [6, 9, 18],
  [1, 4.5, 5],
  [4, 4, 10],
  [3, 9, 9],
  [1, 5.5, 7],
  [5, 5.5, 9],
];

describe("sums along a critical path (sources in SOURCE.md)", () => {
  test("Taylor, chapter 8: 24, 5 and .9632, printed .9633 after rounding z", () => {
    const { mean, variance } = pathOf(TAYLOR);
    expect(mean).toBeCloseTo(24, 12);
    expect(variance).toBeCloseTo(5, 12);
    expect(normalCdf((28 - mean) / Math.sqrt(variance))).toBeCloseTo(0.9631808649398487, 14);
    expect(Math.round(normalCdf(1.79) * 1e4)).toBe(9633);
  });

  test("Hillier & Lieberman, construction: 44, 9 and .8413", () => {
    const { mean, variance } = pathOf(CONSTRUCTION);
    expect(mean).toBeCloseTo(44, 12);
    expect(variance).toBeCloseTo(9, 12);
    expect(normalCdf((47 - mean) / Math.sqrt(variance))).toBeCloseTo(0.8413447460685429, 14);
  });
});
