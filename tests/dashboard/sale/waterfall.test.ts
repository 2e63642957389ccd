import { beforeAll, describe, expect, test } from "vitest";
import { withOwnPrices } from "../../../dashboard/answers/body.ts";
import type { AppraisalBody } from "../../../dashboard/api/types.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import type { Comparable } from "../../../dashboard/ownPrices/comparables.ts";
import { comparableRows } from "../../../dashboard/sale/comparableRows.ts";
import { pricedStates, type Value } from "../../../dashboard/sale/states.ts";
import { waterfall } from "../../../dashboard/sale/waterfall.ts";
import { appraised } from "../fixtures/service.ts";

/** Invented prices: two of the model, one asked, and one that cannot be. */
const COMPARABLES: readonly Comparable[] = [
  { id: "sale-1", price: 140, currency: "EUR", kind: "paid", ageDays: 10, likeThis: true, month: 5 },
  { id: "sale-2", price: 160, currency: "EUR", kind: "asked", ageDays: 30, likeThis: true, month: 4 },
  { id: "sale-3", price: 9000, currency: "EUR", kind: "paid", ageDays: 60, likeThis: true, month: 3 },
];

async function valued(body: AppraisalBody, comparables: readonly Comparable[]): Promise<Value | null> {
  return (await appraised(withOwnPrices(body, { partPrices: {}, comparables }))).value;
}

describe("the waterfall of every demo find, in every state it can be sold in, with and without own sales", () => {
  const values: { readonly name: string; readonly value: Value }[] = [];
  beforeAll(async () => {
    for (const { id, body } of DEMO_FINDS) {
      for (const sent of [[], COMPARABLES]) {
        const value = await valued(body, sent);
        if (value !== null) values.push({ name: `${id} with ${sent.length}`, value });
      }
    }
  });

  test("multiplies and sums from the reference price to the median", () => {
    expect(values.length).toBeGreaterThan(10);
    for (const { name, value } of values) {
      for (const { state, band } of pricedStates(value)) {
        const steps = waterfall(value, state);
        const product = steps.reduce((sum, { factor }) => sum * factor, value.referencePrice);
        const sum = steps.reduce((total, { from, to }) => total + (to - from), value.referencePrice);
        expect(product / band.p50, name).toBeCloseTo(1, 9);
        expect(sum / band.p50, name).toBeCloseTo(1, 9);
        // Each begins where the one before ended.
        steps.forEach(({ from }, i) => {
          expect(from).toBe(i === 0 ? value.referencePrice : steps[i - 1]?.to);
        });
      }
    }
  });

  test("shows no step that would read as nothing, but for all that are joined", () => {
    for (const { name, value } of values) {
      const steps = waterfall(value, "asFound");
      const small = steps.filter(({ from, to }) => Math.abs(to - from) < 0.5);
      expect(small.filter(({ term }) => term !== "rest").length, name).toBe(0);
      expect(steps.filter(({ term }) => term === "rest").length).toBeLessThanOrEqual(1);
      // The state it is sold in comes last.
      expect(steps.findIndex(({ term }) => term === "state")).toBe(steps.length - 1);
    }
  });

  test("is empty for a state it has no price in", () => {
    const closed = values.find(({ value }) => value.madeSafe === null);
    expect(closed && waterfall(closed.value, "madeSafe")).toEqual([]);
  });
});

describe("the rows of own sales", () => {
  test("are told apart by id, the weightiest first; the impossible one is flagged, an advert brought down", async () => {
    const body = DEMO_FINDS.find(({ id }) => id === "plum-hybrid")!.body;
    const value = (await valued(body, COMPARABLES))!;
    const kept = COMPARABLES.map(({ id, price, currency, kind }) => ({
      id,
      price,
      currency,
      kind,
      date: "2026-05-01",
    }));
    const rows = comparableRows(value, kept);
    expect(rows.map(({ sale }) => sale.id).sort()).toEqual(["sale-1", "sale-2", "sale-3"]);
    const weights = rows.map(({ weight }) => weight);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    const far = rows.filter(({ surprising }) => surprising).map(({ sale }) => sale.id);
    expect(far).toEqual(["sale-3"]);
    const advert = rows.find(({ sale }) => sale.id === "sale-2")!;
    expect(advert.goingRate * value.askedFactor).toBeCloseTo(160, 6);
    for (const { before, after } of rows) {
      expect(after).toBeCloseTo(value.madeSafe!.p50, 6);
      expect(before).toBeGreaterThan(0);
    }
    // A sale removed since the question was put has no row.
    expect(comparableRows(value, kept.slice(1)).map(({ sale }) => sale.id)).not.toContain("sale-1");
  });
});
