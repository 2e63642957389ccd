import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Comparable } from "../../../worker/engine/valuation/comparable.ts";
import { learnFromSales, readComparables } from "../../../worker/engine/valuation/learnFromSales.ts";
import { predict } from "../../../worker/engine/valuation/prediction.ts";
import type { SaleDescription } from "../../../worker/engine/valuation/saleDescription.ts";
import { valueBand } from "../../../worker/engine/valuation/valueBand.ts";
import { comparable, READING } from "./comparableSale.ts";
import { COMPILED, MODEL, PRIOR } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

const BIKE = plainSale({}, { state: { kind: "rides", condition: 0.75 } });
const believed = (sales: readonly Comparable[], reading = READING) =>
  learnFromSales(COMPILED, readComparables(COMPILED, sales, reading));
const middle = (sales: readonly Comparable[], bike: SaleDescription = BIKE, reading = READING) =>
  Math.exp(predict(believed(sales, reading), bike).logMedian);
const BEFORE = middle([]);
const three = (changes: Partial<Comparable>) => Array.from({ length: 3 }, () => comparable(changes));

describe("what own sales teach", () => {
  test("nothing said, nothing learned", () => {
    expect(believed([])).toBe(MODEL);
  });

  test("three at half the table's level move the middle to between .45 and .75 of it", () => {
    for (const changes of [{}, { likeThis: true }, { ageDays: 200 }, { likeThis: true, attributes: {} }]) {
      const share = middle(three({ price: BEFORE / 2, ...changes })) / BEFORE;
      expect(share).toBeGreaterThan(0.45);
      expect(share).toBeLessThan(0.75);
    }
  });

  test("one of the same model moves more than one of another model, a fresh one more than an old one, a known one more than a vague one", () => {
    const price = BEFORE / 2;
    const moved = (changes: Partial<Comparable>) => middle([comparable({ price, ...changes })]);
    expect(moved({ likeThis: true })).toBeLessThan(moved({}));
    expect(moved({ ageDays: 3 * PRIOR.halfLifeDays })).toBeGreaterThan(moved({}));
    expect(moved({ condition: undefined })).toBeGreaterThan(moved({}));
    expect(moved({ attributes: { category: "hybrid" } })).toBeGreaterThan(moved({}));
    expect(moved({ attributes: { category: "cargo" } })).toBeGreaterThan(moved({ attributes: {} }) - 60);
  });

  test("after two half-lives four sales count as one", () => {
    const old = Array.from({ length: 4 }, () => comparable({ price: 150, ageDays: 2 * PRIOR.halfLifeDays }));
    const [aged, fresh] = [believed(old), believed([comparable({ price: 150 })])];
    expect(aged.tails.degreesOfFreedom).toBeCloseTo(fresh.tails.degreesOfFreedom, 12);
    expect(aged.variance).toBeCloseTo(fresh.variance, 12);
    expect(predict(aged, BIKE).logMedian).toBeCloseTo(predict(fresh, BIKE).logMedian, 12);
  });

  test("a price paid is brought up by what haggling took off, an asking price is not", () => {
    const haggled = { ...READING, paidShare: { rides: 0.9, notRiding: 0.82 } };
    const [paid] = readComparables(COMPILED, [comparable({ price: 180 })], haggled);
    const [broken] = readComparables(
      COMPILED,
      [comparable({ price: 82, condition: undefined, state: "does-not-ride" })],
      haggled,
    );
    const [asked] = readComparables(COMPILED, [comparable({ price: 180, kind: "asked" })], haggled);
    expect(paid!.goingRate).toBeCloseTo(200, 9);
    expect(broken!.goingRate).toBeCloseTo(100, 9);
    expect(asked!.goingRate).toBeCloseTo(180, 9);
  });

  test("how much asking prices run high is learned from asked and paid side by side", () => {
    const asked = MODEL.layout.asked;
    expect(Math.exp(MODEL.coefficients[asked]!)).toBeCloseTo(PRIOR.asked.factor, 12);
    const both = (factor: number) => [
      ...Array.from({ length: 12 }, () => comparable({ price: BEFORE })),
      ...Array.from({ length: 12 }, () => comparable({ price: BEFORE * factor, kind: "asked" })),
    ];
    const bias = (factor: number) => Math.exp(believed(both(factor)).coefficients[asked]!);
    expect(bias(1.25)).toBeGreaterThan(1.12);
    expect(bias(1.25)).toBeLessThan(1.25);
    expect(bias(1)).toBeLessThan(PRIOR.asked.factor);
    expect(middle(both(1.25)) / BEFORE).toBeGreaterThan(1);
  });

  test("prices that say what was expected leave the middle and narrow the band", () => {
    const now = valueBand(predict(MODEL, BIKE));
    const sales = Array.from({ length: 5 }, () =>
      comparable({ price: BEFORE, originality: 0.8, desirability: 0 }),
    );
    const [read] = readComparables(COMPILED, sales.slice(0, 1), READING);
    // What the averaged description is expected to fetch, as papers, photographs and place are not told.
    const expected = Math.exp(
      read!.x.reduce((sum, value, column) => sum + value * MODEL.coefficients[column]!, 0),
    );
    const after = valueBand(predict(believed(sales.map((sale) => ({ ...sale, price: expected }))), BIKE));
    expect(after.p50 / now.p50).toBeCloseTo(1, 9);
    expect(after.p90 / after.p10).toBeLessThan(now.p90 / now.p10);
  });

  test("another level of prices scales everything, and nothing else", () => {
    const sales = [comparable({ price: 150 }), comparable({ price: 260, kind: "asked", likeThis: true })];
    const scaled = sales.map((sale) => ({ ...sale, price: 11 * sale.price }));
    const kroner = { ...READING, logPriceLevel: Math.log(11) };
    expect(middle(scaled, BIKE, kroner)).toBeCloseTo(middle(sales), 9);
  });

  test("their order does not matter, and those described alike may be read together or apart", () => {
    const any = fc.record({
      price: fc.double({ min: 20, max: 900, noNaN: true }),
      ageDays: fc.integer({ min: 0, max: 1500 }),
      likeThis: fc.boolean(),
      kind: fc.constantFrom("paid" as const, "asked" as const),
      condition: fc.constantFrom(undefined, 0, 0.45, 0.75, 1),
      category: fc.constantFrom("hybrid" as const, "touring" as const, undefined),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 8 }), (drawn) => {
        const sales = drawn.map(({ category, ...rest }) => comparable({ ...rest, attributes: { category } }));
        const together = middle(sales);
        expect(middle(sales.toReversed()) / together).toBeCloseTo(1, 10);
        // A row of its own for each, so that nothing is gathered.
        const apart = sales.flatMap((sale) => readComparables(COMPILED, [sale], READING));
        expect(Math.exp(predict(learnFromSales(COMPILED, apart), BIKE).logMedian) / together).toBeCloseTo(
          1,
          10,
        );
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test("a bike of another kind is moved less than one of the same", () => {
    const sales = three({ price: BEFORE / 2 });
    const other = plainSale({ category: "road-racing" }, { state: { kind: "rides", condition: 0.75 } });
    const moved = (bike: SaleDescription) => middle(sales, bike) / middle([], bike);
    expect(moved(other)).toBeGreaterThan(moved(BIKE) + 0.03);
    expect(moved(other)).toBeLessThan(0.9);
  });
});
