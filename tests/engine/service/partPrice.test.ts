import { describe, expect, test } from "vitest";
import { TIERS, type Tier } from "../../../worker/engine/bicycle.ts";
import type { Part, PriceRange } from "../../../worker/engine/service/part.ts";
import { expectedPrice, priceRange } from "../../../worker/engine/service/partPrice.ts";
import { BOOK } from "../decision/shippedBook.ts";

/** Prices that tell tier and state apart: 10, 20, 30, 40 new from entry to top, half of that used. */
const flat = (typical: number): PriceRange => ({ low: typical, typical, high: typical });
const byTier = (step: number) =>
  Object.fromEntries(TIERS.map((tier, place) => [tier, flat(step * (place + 1))])) as Record<
    Tier,
    PriceRange
  >;

function part(buy: Part["buy"], used: Part["prices"]["used"] = byTier(5)): Part {
  return { id: "thing", name: "Thing", kind: "part", unit: "each", buy, prices: { new: byTier(10), used } };
}
const paid = (one: Part) => TIERS.map((tier) => priceRange(one, tier).typical);

describe("the price of a part bought for a resale bike", () => {
  test("wear parts are new and one tier below the bike, never below entry", () => {
    expect(paid(part({ state: "new", tiersBelow: 1 }))).toEqual([10, 10, 20, 30]);
  });

  test("others are at the bike's own tier, used where their row says so", () => {
    expect(paid(part({ state: "new", tiersBelow: 0 }))).toEqual([10, 20, 30, 40]);
    expect(paid(part({ state: "used", tiersBelow: 0 }))).toEqual([5, 10, 15, 20]);
  });

  test("what has no used price is bought new", () => {
    expect(paid(part({ state: "used", tiersBelow: 0 }, null))).toEqual([10, 20, 30, 40]);
  });

  test("a part with a best tier is never bought above it", () => {
    expect(paid(part({ state: "new", tiersBelow: 0, tierCap: "mid" }))).toEqual([10, 20, 20, 20]);
    expect(paid(part({ state: "new", tiersBelow: 1, tierCap: "mid" }))).toEqual([10, 10, 20, 20]);
  });

  test("a range of 4, 7 and 13 is expected at (4 + 28 + 13) / 6 with a deviation of (13 - 4) / 6 (PERT)", () => {
    const ranged = {
      ...part({ state: "new", tiersBelow: 0 }),
      prices: { new: { ...byTier(10), mid: { low: 4, typical: 7, high: 13 } }, used: null },
    };
    const { mean, variance } = expectedPrice(ranged, "mid", new Map());
    expect(mean).toBeCloseTo(7.5, 12);
    expect(variance).toBeCloseTo(2.25, 12);
  });

  test("the user's own price is certain, whatever tier and state", () => {
    const own = new Map([["thing", 17]]);
    for (const tier of TIERS)
      expect(expectedPrice(part({ state: "used", tiersBelow: 1 }), tier, own)).toEqual({
        mean: 17,
        variance: 0,
      });
    expect(expectedPrice(part({ state: "new", tiersBelow: 0 }), "top", new Map([["other", 1]])).mean).toBe(
      40,
    );
  });
});

describe("the product's own parts (common practice, no source)", () => {
  const shipped = (id: string) => BOOK.service.parts.get(id)!;

  test.each(["tyre", "tube", "chain", "rim-pads", "bar-tape", "cassette"])(
    "%s wears out: new, one tier below",
    (id) => {
      expect(shipped(id).buy).toMatchObject({ state: "new", tiersBelow: 1 });
      expect(priceRange(shipped(id), "upper")).toEqual(shipped(id).prices.new.mid);
    },
  );

  test.each(["wheel-front", "wheel-rear", "crankset", "rear-mech"])(
    "%s is bought used at the bike's own tier",
    (id) => {
      for (const tier of TIERS) expect(priceRange(shipped(id), tier)).toEqual(shipped(id).prices.used![tier]);
    },
  );

  test("a better bike never gets a cheaper part", () => {
    for (const one of BOOK.catalogue.service.parts) {
      const prices = TIERS.map((tier) => expectedPrice(one, tier, new Map()).mean);
      expect(prices, one.id).toEqual(prices.toSorted((a, b) => a - b));
    }
  });

  test("used costs less than new at the same tier", () => {
    for (const { id, prices } of BOOK.catalogue.service.parts)
      if (prices.used)
        for (const tier of TIERS)
          expect(prices.used[tier].typical, `${id} ${tier}`).toBeLessThan(prices.new[tier].typical);
  });
});
