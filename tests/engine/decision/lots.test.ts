import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import { byLots, lotsOf } from "../../../worker/engine/decision/lots.ts";
import { logNormalMean } from "../../../worker/engine/statistics/logNormal.ts";

const pieces = fc.array(
  fc.record({
    chance: fc.double({ min: 0, max: 1, noNaN: true }),
    net: fc.double({ min: 1, max: 200, noNaN: true }),
  }),
  { minLength: 1, maxLength: 7 },
);
const spread = fc.double({ min: 0.05, max: 0.8, noNaN: true });

const summed = <Item>(items: readonly Item[], of: (item: Item) => number) =>
  items.reduce((sum, item) => sum + of(item), 0);

describe("pieces that sell or do not, in lots", () => {
  test("keep the mean, variance and third moment of independent pieces", () => {
    fc.assert(
      fc.property(pieces, spread, (all, logSd) => {
        const lots = lotsOf(all, logSd);
        const mean = summed(lots, ({ chance, takings }) => chance * takings);
        const central = (power: 2 | 3) =>
          summed(lots, ({ chance, takings, variance, third }) => {
            const off = takings - mean;
            const within = power === 2 ? variance : third + 3 * off * variance;
            return chance * (within + off ** power);
          });
        expect(summed(lots, ({ chance }) => chance)).toBeCloseTo(1, 12);
        expect(mean).toBeCloseTo(
          summed(all, ({ chance, net }) => chance * net),
          9,
        );
        expect(central(2)).toBeCloseTo(
          summed(all, ({ chance, net }) => chance * (1 - chance) * net ** 2),
          6,
        );
        expect(central(3) / 1e4).toBeCloseTo(
          summed(all, ({ chance, net }) => chance * (1 - chance) * (1 - 2 * chance) * net ** 3) / 1e4,
          6,
        );
      }),
    );
  });

  test("that none sells stands alone, with its chance", () => {
    fc.assert(
      fc.property(pieces, spread, (all, logSd) => {
        const none = all.reduce((product, { chance }) => product * (1 - chance), 1);
        const alone = lotsOf(all, logSd).filter(({ takings }) => takings === 0);
        expect(summed(alone, ({ chance }) => chance)).toBeCloseTo(none, 12);
        expect(summed(alone, ({ variance }) => variance)).toBe(0);
      }),
    );
  });

  test("share a branch out among themselves: its chance and what it brings on average stay", () => {
    fc.assert(
      fc.property(pieces, spread, fc.double({ min: 0.01, max: 1, noNaN: true }), (all, logSd, likely) => {
        const mean = summed(all, ({ chance, net }) => chance * net);
        fc.pre(mean > 1e-6);
        const price = { logMedian: Math.log(mean) - logSd ** 2 / 2, logSd };
        const sale = { price, share: 1, lots: lotsOf(all, logSd) };
        const branch: Branch = {
          chance: likely,
          price,
          share: 1,
          outlay: { mean: 30, variance: 4, third: 0 },
          minutes: { mean: 60, variance: 9 },
          covariance: 0,
          otherMinutes: 0,
        };
        const branches = byLots(branch, sale);
        expect(summed(branches, ({ chance }) => chance)).toBeCloseTo(likely, 12);
        const brought = summed(branches, (one) => (one.price ? one.chance * logNormalMean(one.price) : 0));
        expect(brought).toBeCloseTo(likely * mean, 9);
        expect(byLots(branch, { price, share: 1 })).toEqual([branch]);
      }),
    );
  });
});
