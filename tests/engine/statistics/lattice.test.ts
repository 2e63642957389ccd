import { describe, expect, test } from "vitest";
import { convolve, type Lattice, latticeOf } from "../../../worker/engine/statistics/lattice.ts";
import {
  logNormalCdf,
  logNormalFromMean,
  logNormalMean,
} from "../../../worker/engine/statistics/logNormal.ts";

const mean = (lattice: Float64Array, step: number) =>
  lattice.reduce((sum, chance, point) => sum + chance * point * step, 0);
const total = (lattice: Float64Array) => lattice.reduce((sum, chance) => sum + chance, 0);

describe("a distribution on a lattice", () => {
  const work = logNormalFromMean(120, 30);

  test("sums to 1 and keeps the mean exactly, however wide the step (Gerber 1982)", () => {
    for (const step of [0.5, 7, 60, 200]) {
      const lattice = latticeOf(
        [
          { chance: 0.8, quantity: work },
          { chance: 0.2, quantity: 45 },
        ],
        step,
        5000,
      );
      expect(total(lattice)).toBeCloseTo(1, 9);
      expect(mean(lattice, step)).toBeCloseTo(0.8 * logNormalMean(work) + 0.2 * 45, 6);
    }
  });

  test("splits a fixed number between its neighbours in proportion", () => {
    expect([...latticeOf([{ chance: 1, quantity: 2.25 }], 1, 3)]).toEqual([0, 0, 0.75, 0.25]);
    expect([...latticeOf([{ chance: 1, quantity: 0 }], 1, 2)]).toEqual([1, 0, 0]);
  });

  test("has the distribution of the quantity at a fine step", () => {
    const lattice = latticeOf([{ chance: 1, quantity: work }], 0.25, 400);
    let below = 0;
    lattice.forEach((chance, point) => {
      below += chance;
      if (point % 100 === 0) expect(below).toBeCloseTo(logNormalCdf(work, point * 0.25 + 0.125), 4);
    });
  });

  test("convolved, coins give the binomial distribution", () => {
    const coin = Float64Array.of(0.5, 0.5);
    const four = [coin, coin, coin].reduce<Lattice>((sum, one) => convolve(sum, one), coin);
    expect([...four]).toEqual([1 / 16, 4 / 16, 6 / 16, 4 / 16, 1 / 16]);
  });
});
