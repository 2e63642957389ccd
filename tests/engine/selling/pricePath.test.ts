import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writtenPrices } from "../../../worker/engine/selling/demand/priceGrid.ts";
import { optimalPath, type PricePath, pricedPath } from "../../../worker/engine/selling/demand/pricePath.ts";
import { writtenPath } from "../../../worker/engine/selling/demand/writtenPath.ts";
import { anyTerms, saleOf, type Terms } from "./anyPosting.ts";
import { bestOfEveryPath } from "./everyPath.ts";

const STEPS = [
  { below: 20, step: 1 },
  { below: 100, step: 5 },
  { below: 300, step: 10 },
  { below: 1000, step: 25 },
];
const reached = ({ prices, end }: PricePath) => [...prices.slice(0, end)];

describe("against every path, one by one", () => {
  test("no path of a fine list is worth more, and the best of them hardly less", () => {
    fc.assert(
      fc.property(anyTerms, fc.integer({ min: 1, max: 3 }), (terms, weeks) => {
        const sale = saleOf({ ...terms, weeks });
        const ours = optimalPath(sale);
        const { lowest, highest } = sale.range;
        const list = Array.from({ length: 24 }, (_, at) => lowest * (highest / lowest) ** (at / 23));
        const coarse = bestOfEveryPath(sale, list);
        expect(coarse.worth).toBeLessThanOrEqual(ours.worth + 1e-7 * Math.abs(ours.worth));
        // Nearer to our prices the list closes in on our worth.
        const near = reached(ours).flatMap((price) =>
          [0.985, 0.995, 1, 1.005, 1.015].map((by) => by * price),
        );
        const fine = bestOfEveryPath(sale, near);
        expect(Math.abs(fine.worth - ours.worth)).toBeLessThan(1e-7 * Math.abs(ours.worth) + 1e-9);
      }),
      { numRuns: 25 },
    );
  });

  test("on the prices people write, the search by neighbours finds the best there is", () => {
    let apart = 0;
    fc.assert(
      fc.property(anyTerms, fc.integer({ min: 1, max: 3 }), (terms, weeks) => {
        const sale = saleOf({ ...terms, weeks });
        const { lowest, highest } = sale.range;
        const all = writtenPrices(STEPS, lowest, highest);
        const best = optimalPath(sale);
        const ours = writtenPath(sale, best.prices, all);
        const top = Math.max(...reached(best)) * 1.3;
        const bottom = Math.min(...reached(best)) * 0.7;
        const likely = all.filter((price) => price > bottom && price < top);
        const every = bestOfEveryPath(sale, likely);
        expect(ours.worth).toBeLessThanOrEqual(best.worth + 1e-7 * Math.abs(best.worth));
        // Two prices may have to move together for the last cent: then the search stops just short of it.
        const short = (every.worth - ours.worth) / Math.abs(every.worth);
        expect(short).toBeLessThan(1e-4);
        if (short > 1e-9) apart++;
      }),
      { numRuns: 25, seed: 7 },
    );
    expect(apart).toBeLessThanOrEqual(1);
  });
});

describe("laws", () => {
  test("in a flat season prices come down week by week", () => {
    fc.assert(
      fc.property(anyTerms, (terms) => {
        const prices = reached(optimalPath(saleOf(terms)));
        prices.slice(1).forEach((price, at) => {
          expect(price).toBeLessThanOrEqual(prices[at]! * (1 + 1e-5));
        });
      }),
      { numRuns: 60 },
    );
  });

  test("a higher storage cost never raises a price where the going rate is known, nor the list price where it is not", () => {
    fc.assert(
      fc.property(anyTerms, fc.double({ min: 0, max: 5, noNaN: true }), fc.boolean(), (any, more, known) => {
        const terms = known ? { ...any, above: 1, below: 1 } : any;
        const cheap = optimalPath(saleOf(terms));
        const dear = optimalPath(saleOf({ ...terms, storage: terms.storage + more }));
        expect(dear.worth).toBeLessThanOrEqual(cheap.worth + 1e-9 * Math.abs(cheap.worth));
        expect(dear.prices[0]!).toBeLessThanOrEqual(cheap.prices[0]! * (1 + 1e-6));
        // Later prices also hang on who has not bought so far: with lower prices before, what is left says a little else of the going rate.
        const slack = known ? 1e-6 : 5e-3;
        for (let week = 1; week < Math.min(cheap.end, dear.end); week++)
          expect(dear.prices[week]!).toBeLessThanOrEqual(cheap.prices[week]! * (1 + slack));
      }),
      { numRuns: 100 },
    );
  });

  test("more time never lowers the worth, nor does a better fallback, more buyers or no fee", () => {
    const better: readonly ((terms: Terms) => Terms)[] = [
      (terms) => ({ ...terms, weeks: terms.weeks + 3 }),
      (terms) => ({ ...terms, quickSale: terms.quickSale + 0.05 }),
      (terms) => ({ ...terms, arrivals: terms.arrivals * 1.2 }),
      (terms) => ({ ...terms, fee: 0 }),
    ];
    fc.assert(
      fc.property(anyTerms, fc.constantFrom(...better), (terms, change) => {
        const before = optimalPath(saleOf(terms)).worth;
        const after = optimalPath(saleOf(change(terms))).worth;
        expect(after).toBeGreaterThanOrEqual(before - 1e-7 * Math.abs(before));
      }),
      { numRuns: 80 },
    );
  });

  test("money in another unit changes nothing but the unit", () => {
    fc.assert(
      fc.property(anyTerms, (terms) => {
        const small = optimalPath(saleOf(terms));
        const large = optimalPath(saleOf({ ...terms, p50: 100 * terms.p50, storage: 100 * terms.storage }));
        expect(large.worth / small.worth).toBeCloseTo(100, 5);
        expect(large.end).toBe(small.end);
        expect(large.prices[0]! / small.prices[0]!).toBeCloseTo(100, 2);
      }),
      { numRuns: 30 },
    );
  });

  test("where keeping it costs more than it can gain, it goes for the fallback after a week", () => {
    const path = optimalPath(
      saleOf({
        p50: 100,
        above: 1.2,
        below: 1.2,
        weeks: 8,
        arrivals: 0.3,
        storage: 40,
        quickSale: 0.7,
        fee: 0,
      }),
    );
    expect(path.end).toBe(1);
  });

  test("given prices are worth what the best are at most", () => {
    fc.assert(
      fc.property(anyTerms, fc.double({ min: 0.7, max: 1.4, noNaN: true }), (terms, factor) => {
        const sale = saleOf(terms);
        const best = optimalPath(sale);
        const other = pricedPath(
          sale,
          best.prices.map((price) => price * factor),
        );
        expect(other.worth).toBeLessThanOrEqual(best.worth + 1e-7 * Math.abs(best.worth));
      }),
      { numRuns: 40 },
    );
  });
});
