import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { outcomeOf } from "../../../worker/engine/decision/outcome.ts";
import { convolve } from "../../../worker/engine/statistics/lattice.ts";
import {
  scaledBetaAt,
  scaledBetaMean,
  scaledBetaVariance,
  threePointBeta,
} from "../../../worker/engine/statistics/scaledBeta.ts";

const estimate = fc
  .tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 90, noNaN: true }),
    fc.double({ min: 1, max: 50, noNaN: true }),
  )
  .map(([share, optimistic, width]) => ({
    optimistic,
    likely: optimistic + share * width,
    pessimistic: optimistic + width,
  }));

describe("a three-point estimate as a beta", () => {
  test("has the rule's mean and standard deviation (Malcolm et al. 1959)", () => {
    fc.assert(
      fc.property(estimate, (one) => {
        const beta = threePointBeta(one)!;
        expect(scaledBetaMean(beta)).toBeCloseTo((one.optimistic + 4 * one.likely + one.pessimistic) / 6, 9);
        expect(Math.sqrt(scaledBetaVariance(beta))).toBeCloseTo((one.pessimistic - one.optimistic) / 6, 9);
      }),
    );
  });

  test("has the density as the slope of its chances, and that one's slope in turn", () => {
    const beta = threePointBeta({ optimistic: 0, likely: 2, pessimistic: 8 })!;
    const step = 1e-5;
    for (const x of [0.3, 1, 2, 3.7, 6, 7.5]) {
      const [before, here, after] = [x - step, x, x + step].map((at) => scaledBetaAt(beta, at));
      expect((after!.below - before!.below) / (2 * step)).toBeCloseTo(here!.density, 7);
      expect((after!.density - before!.density) / (2 * step)).toBeCloseTo(here!.slope, 6);
    }
    expect([-1, 9].map((x) => scaledBetaAt(beta, x).below)).toEqual([0, 1]);
  });

  test("is nothing where nothing varies", () => {
    expect(threePointBeta({ optimistic: 3, likely: 3, pessimistic: 3 })).toBeNull();
  });
});

/** Chances of 0, 1, 2, ... steps of a beta, by differences of its chances at the middles between points. */
function onLattice(estimateOf: readonly [number, number, number], step: number): Float64Array {
  const [optimistic, likely, pessimistic] = estimateOf;
  const beta = threePointBeta({ optimistic, likely, pessimistic })!;
  const below = (point: number) => scaledBetaAt(beta, (point + 0.5) * step).below;
  return Float64Array.from(
    { length: Math.ceil(pessimistic / step) + 1 },
    (_, point) => below(point) - below(point - 1),
  );
}

describe("an outlay of few prices where nothing is sold", () => {
  test("has the quantiles of the exact sum: a fee of 0, 2, 8 and two doses of 1, 2, 3, summed on a lattice of thousandths", () => {
    const step = 1e-3;
    const dose = onLattice([1, 2, 3], step);
    const sum = convolve(convolve(onLattice([0, 2, 8], step), dose), dose);
    const quantile = (p: number) => {
      let below = 0;
      const point = sum.findIndex((chance) => {
        below += chance;
        return below >= p;
      });
      return point * step;
    };
    const [mean, variance] = [8 / 3 + 4, 16 / 9 + 2 / 9];
    const widest = threePointBeta({ optimistic: 0, likely: 2, pessimistic: 8 })!;
    const branch = {
      chance: 1,
      price: null,
      share: 0,
      outlay: { mean, variance, third: 0, widest },
      minutes: { mean: 60, variance: 0 },
      covariance: 0,
      otherMinutes: 0,
    };
    const { margin } = outcomeOf([branch], { hourlyGoal: 12, speedFactor: 1, speedSpread: 0.2 });
    const within = 0.003 * Math.sqrt(variance);
    expect(Math.abs(margin.p10 + quantile(0.9))).toBeLessThan(within);
    expect(Math.abs(margin.p50 + quantile(0.5))).toBeLessThan(within);
    expect(Math.abs(margin.p90 + quantile(0.1))).toBeLessThan(within);
  });
});
