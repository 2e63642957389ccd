import { describe, expect, test } from "vitest";
import { buyingRates, poissonBuyers } from "../../../worker/engine/selling/demand/arrivals.ts";
import { planSale } from "../../../worker/engine/selling/planSale.ts";
import { BOOK } from "../../engine/decision/shippedBook.ts";

/** How fast and how low bicycles sell: common practice, no source. */

const { arrivalsPerWeek, willingness } = BOOK.catalogue.selling;

/** Mean days until a bicycle of middling demand is sold where the asking price stands at a multiple of its going rate. */
function days(multiple: number): number {
  const rates = { logRates: Float64Array.of(0), weights: Float64Array.of(1) };
  const buyers = { logCentre: Math.log(willingness.centre), logSd: willingness.logSd };
  const buying = buyingRates(1);
  poissonBuyers(rates, buyers, [{ arrivals: arrivalsPerWeek, logRate: 0 }]).at(0, multiple, buying);
  return 7 / buying.rate[0]!;
}

const planned = (market = {}) =>
  planSale(
    { subject: { value: { p10: 160, p50: 200, p90: 244 }, currency: undefined }, market, offer: null },
    BOOK,
  );

describe("how fast a bicycle sells (common practice, no source)", () => {
  test.each([
    [1, 14, 21],
    [1.1, 35, 45],
    [1.2, 75, 100],
  ])("asking %d times the going rate takes %d to %d days", (multiple, least, most) => {
    expect(days(multiple)).toBeGreaterThan(least);
    expect(days(multiple)).toBeLessThan(most);
  });

  test("asking a tenth less sells in about half the time", () => {
    expect(days(0.9) / days(1)).toBeGreaterThan(0.35);
    expect(days(0.9) / days(1)).toBeLessThan(0.65);
  });
});

describe("how low to go (common practice, no source)", () => {
  test("one asks somewhat more than one would take, and comes down within weeks", () => {
    const { path, listPrice } = planned();
    expect(listPrice / path[0]!.lowestOffer).toBeGreaterThan(1.08);
    expect(listPrice / path[0]!.lowestOffer).toBeLessThan(1.6);
    expect(path.slice(0, 5).some(({ price }) => price < listPrice)).toBe(true);
  });

  test("an offer a quarter below the price asked is not taken in the first week", () => {
    const { path, listPrice } = planned();
    expect(path[0]!.lowestOffer).toBeGreaterThan(0.75 * listPrice);
  });

  test("sell from March to June: what stands in December waits for spring", () => {
    expect([2, 3, 4, 5]).toContain(planned({ month: 12 }).holdUntil!.month);
    for (const month of [3, 4, 5, 6]) expect(planned({ month }).holdUntil).toBeNull();
  });
});
