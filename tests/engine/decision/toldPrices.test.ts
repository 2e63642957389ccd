import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MomentMixture } from "../../../worker/engine/decision/momentMixture.ts";
import { toldPrices } from "../../../worker/engine/decision/toldPrices.ts";
import { logNormalMean, logNormalSd } from "../../../worker/engine/statistics/logNormal.ts";

const SALE = { price: { logMedian: Math.log(120), logSd: 0.28 }, share: 0.9 };
const TAKINGS = SALE.share * logNormalMean(SALE.price);

/** One way the unseen may turn out: its chance, what is told at the mean price, what is spent. */
type Outcome = readonly [chance: number, told: number, money: number];

/** E[p^n] of a log-normal price over its mean. */
const ofPrice = (n: number) => Math.exp((n * (n - 1) * SALE.price.logSd ** 2) / 2);

/** E, variance and third central moment of p (takings - told) - money, each outcome on its own. */
function played(outcomes: readonly Outcome[]) {
  const raw = [0, 0, 0];
  for (const [chance, told, money] of outcomes) {
    const left = TAKINGS - told;
    raw[0]! += chance * (left - money);
    raw[1]! += chance * (ofPrice(2) * left ** 2 - 2 * left * money + money ** 2);
    raw[2]! +=
      chance *
      (ofPrice(3) * left ** 3 - 3 * ofPrice(2) * left ** 2 * money + 3 * left * money ** 2 - money ** 3);
  }
  return central(raw);
}

function central([mean, square, cube]: readonly number[]) {
  return {
    mean: mean!,
    variance: square! - mean! ** 2,
    third: cube! - 3 * mean! * square! + 2 * mean! ** 3,
  };
}

/** The same of the prices and money out that are told. */
function told(outcomes: readonly Outcome[]) {
  const unseen = new MomentMixture();
  for (const [chance, loss, money] of outcomes) unseen.add(chance, { told: loss, money, minutes: 0 });
  const raw = [0, 0, 0];
  for (const { chance, price, outlay } of toldPrices(unseen.close(), SALE, 0)) {
    const takings = SALE.share * logNormalMean(price);
    const sd = SALE.share * logNormalSd(price);
    const swing = sd / takings;
    const mean = takings - outlay.mean;
    const variance = sd ** 2 + outlay.variance;
    const third = takings ** 3 * swing ** 4 * (3 + swing ** 2) - outlay.third;
    raw[0]! += chance * mean;
    raw[1]! += chance * (variance + mean ** 2);
    raw[2]! += chance * (third + 3 * mean * variance + mean ** 3);
  }
  return central(raw);
}

const crossed = (tolds: readonly (readonly number[])[], spent: readonly (readonly number[])[]): Outcome[] =>
  tolds.flatMap(([p, loss]) => spent.map(([q, money]): Outcome => [p! * q!, loss!, money!]));

describe("what is told to the buyer takes a share of the price", () => {
  test("mean, variance and third moment are those of every outcome played, where money is spent regardless", () => {
    const chance = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    const amount = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(chance, amount, chance, amount, (p, more, q, money) => {
        const outcomes = crossed(
          [
            [p, 30 + more],
            [1 - p, 0],
          ],
          [
            [q, money],
            [1 - q, 5],
          ],
        );
        const [a, b] = [told(outcomes), played(outcomes)];
        expect(a.mean).toBeCloseTo(b.mean, 9);
        expect(a.variance / b.variance).toBeCloseTo(1, 9);
        expect(a.third / b.variance ** 1.5).toBeCloseTo(b.third / b.variance ** 1.5, 7);
      }),
    );
  });

  test("a tyre that is told of or replaced, never both: mean and variance exact, skewness to a thousandth", () => {
    const outcomes: Outcome[] = [
      [0.2, 12, 0],
      [0.2, 0, 19],
      [0.6, 0, 0],
    ];
    const [a, b] = [told(outcomes), played(outcomes)];
    expect(a.mean).toBeCloseTo(b.mean, 9);
    expect(a.variance / b.variance).toBeCloseTo(1, 9);
    expect(Math.abs(a.third - b.third) / b.variance ** 1.5).toBeLessThan(0.001);
  });

  test("what hardly shows stays one price, all of it counted as money out", () => {
    const unseen = new MomentMixture();
    unseen.add(0.1, { told: 6, money: 3, minutes: 0 });
    unseen.add(0.9, { told: 0, money: 0, minutes: 0 });
    const all = toldPrices(unseen.close(), SALE, 0);
    expect(all).toHaveLength(1);
    expect(SALE.share * logNormalMean(all[0]!.price)).toBeCloseTo(TAKINGS - 0.6, 9);
    expect(all[0]!.outlay.mean).toBeCloseTo(0.3, 12);
    expect(all[0]!.outlay.variance).toBeCloseTo(0.09 * 9 ** 2, 12);
  });
});
