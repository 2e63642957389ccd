import { describe, expect, test } from "vitest";
import { inverseOfGram } from "../../../worker/engine/statistics/upperTriangle.ts";
import { influences, ownShare, withMoreSales } from "../../../worker/engine/valuation/influence.ts";
import { learnFromSales, readComparables } from "../../../worker/engine/valuation/learnFromSales.ts";
import { predict, targetRow } from "../../../worker/engine/valuation/prediction.ts";
import { comparable, READING } from "./comparableSale.ts";
import { COMPILED } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

const BIKE = plainSale({ sizeClass: "small" }, { state: { kind: "rides", condition: 0.75 } });
const SALES = [
  comparable({ price: 140 }),
  comparable({ price: 150, kind: "asked", ageDays: 400 }),
  comparable({ price: 320, likeThis: true, condition: 1 }),
  comparable({ price: 90, attributes: { category: "touring" }, condition: undefined }),
  comparable({ price: 140 }),
];
const READ = readComparables(COMPILED, SALES, READING);
const BELIEF = learnFromSales(COMPILED, READ);
const middle = (read: typeof READ) => Math.exp(predict(learnFromSales(COMPILED, read), BIKE).logMedian);

describe("how each comparable moves the estimate", () => {
  const moved = influences(BELIEF, READ, BIKE);

  test("without it is the middle of a fit without it", () => {
    moved.forEach(({ before, after }, left) => {
      expect(before).toBeCloseTo(middle(READ.filter((_, index) => index !== left)), 8);
      expect(after).toBeCloseTo(middle(READ), 8);
    });
  });

  test("its weight is how far the middle follows its price", () => {
    moved.forEach(({ weight }, index) => {
      const step = 1e-4;
      const nudged = READ.map((one, at) => (at === index ? { ...one, y: one.y + step } : one));
      const slope = (Math.log(middle(nudged)) - Math.log(middle(READ))) / step;
      expect(weight).toBeCloseTo(slope, 6);
    });
    expect(ownShare(moved)).toBeCloseTo(
      moved.reduce((sum, { weight }) => sum + weight, 0),
      12,
    );
  });

  test("a sale at the price expected of it says what is believed, moves nothing and surprises nobody", () => {
    const { x } = READ[0]!;
    const expected = x.reduce((sum, value, column) => sum + value * BELIEF.coefficients[column]!, 0);
    const read = readComparables(COMPILED, [...SALES, comparable({ price: Math.exp(expected) })], READING);
    const last = influences(learnFromSales(COMPILED, read), read, BIKE).at(-1)!;
    expect(last.says).toBeCloseTo(middle(READ), 8);
    expect(last.before).toBeCloseTo(last.after, 8);
    expect(last.distance).toBeCloseTo(0, 8);
    expect(moved[0]!.distance).toBeLessThan(0);
    expect(moved[2]!.distance).toBeGreaterThan(1);
  });

  test("is the same where many comparables make it worth inverting R", () => {
    const inverted = { ...BELIEF, covariance: inverseOfGram(BELIEF.regression) };
    influences(inverted, READ, BIKE).forEach((one, index) => {
      for (const part of ["before", "after", "weight", "says", "distance"] as const)
        expect(one[part], part).toBeCloseTo(moved[index]![part], 9);
    });
    const many = readComparables(
      COMPILED,
      Array.from({ length: 1000 }, (_, index) => comparable({ price: 100 + index / 10 })),
      READING,
    );
    expect(BELIEF.covariance).toBeNull();
    expect(learnFromSales(COMPILED, many).covariance).not.toBeNull();
  });

  test("a slip of the pen is called far off", () => {
    const read = readComparables(COMPILED, [...SALES, comparable({ price: 1500 })], READING);
    const slip = influences(learnFromSales(COMPILED, read), read, BIKE).at(-1)!;
    expect(slip.distance).toBeGreaterThan(COMPILED.prior.surprising);
  });
});

test("three more sales of the kind at the expected price narrow the band as if they were folded in", () => {
  const { now, after } = withMoreSales(BELIEF, BIKE, 3);
  expect(after.p50).toBeCloseTo(now.p50, 10);
  const width = (band: typeof now) => Math.log(band.p90 / band.p10);
  expect(width(after)).toBeLessThan(width(now));
  // Folded in one by one: the variance of the median, at the scatter that was believed before.
  const { layout, regression, betweenModels } = BELIEF;
  const row = readComparables(COMPILED, [comparable({})], READING)[0]!;
  const x = row.x.slice().fill(0);
  const { columns, values } = targetRow(BELIEF, BIKE).row;
  columns.forEach((column, index) => {
    if (column !== layout.sameModel) x[column] = values[index]!;
  });
  const rows = [1, 2, 3].map(() => ({
    ...row,
    x: x.slice(),
    y: 5,
    precision: 1 / (1 + betweenModels),
    count: 1,
  }));
  const folded = learnFromSales({ ...COMPILED, initial: { ...BELIEF, regression } }, rows);
  const scale = predict({ ...folded, variance: BELIEF.variance }, BIKE).logScale;
  expect(width(after)).toBeCloseTo(2 * folded.tails.p90 * scale, 10);
});
