import { describe, expect, test } from "vitest";
import { sellingPlanAnswer } from "../../worker/api/answers/sellingPlan.ts";
import { exampleSale } from "../../worker/api/routes/sellingPlans.ts";
import type { Appraisal, SellingBody, SellingPlan } from "../../worker/api/types.ts";
import { post } from "./ask.ts";
import { LEAST } from "./bodies.ts";
import { problemIn } from "./problemIn.ts";

const PATH = "/v1/selling-plans";
const VALUE = { p10: 160, p50: 200, p90: 244 };
const ALONE: SellingBody = { value: VALUE };
const OF_FIND: SellingBody = exampleSale;

async function planned(body: unknown): Promise<SellingPlan> {
  const answer = await post(PATH, body);
  expect(answer.status, await answer.clone().text()).toBe(200);
  return answer.json<SellingPlan>();
}

async function faults(body: unknown): Promise<readonly [string, string][]> {
  const { errors } = await problemIn(await post(PATH, body), 422);
  return errors!.map(({ pointer, message }): [string, string] => [pointer, message]);
}

describe("POST /v1/selling-plans", () => {
  test("answers no field that its schema does not declare, and the same request with the same bytes", async () => {
    const offer = { amount: 150, week: 3 };
    for (const body of [ALONE, OF_FIND, LEAST, { ...ALONE, market: { month: 11 }, offer }]) {
      const answer = await planned(body);
      expect(sellingPlanAnswer.parse(answer)).toEqual(answer);
      expect(await planned(body)).toEqual(answer);
    }
  });

  test("a value alone will do: list price, dates to come down, chances and lowest offers that go together", async () => {
    const plan = await planned(ALONE);
    expect(plan).toMatchObject({ currency: "EUR", demoData: true, soldAs: null, value: VALUE, offer: null });
    expect(plan.listPrice).toBe(plan.path[0]!.price);
    expect(plan.path.map(({ week }) => week)).toEqual(plan.path.map((_, at) => at + 1));
    for (const [at, { price, chanceSold, lowestOffer }] of plan.path.entries()) {
      expect(price % 5).toBe(0);
      expect(lowestOffer).toBeLessThanOrEqual(price);
      const before = plan.path[at - 1];
      if (!before) continue;
      expect(price).toBeLessThanOrEqual(before.price);
      expect(chanceSold).toBeGreaterThan(before.chanceSold);
      expect(lowestOffer).toBeLessThan(before.lowestOffer);
    }
    expect(plan.chanceUnsold).toBeCloseTo(1 - plan.path.at(-1)!.chanceSold, 9);
    expect(plan.takings.p10).toBeLessThan(plan.expectedTakings);
    expect(plan.takings.p90).toBeGreaterThan(plan.expectedTakings);
    expect(plan.roundingCost).toBeLessThan(0.01 * plan.worth);
  });

  test("kind, era, material, tier and state will do, with nothing looked at", async () => {
    const found = await planned({ ...LEAST, state: "asFound" });
    expect(found.soldAs).toMatchObject({ state: "asFound", roadworthy: false });
    expect(found.soldAs!.owed.length).toBeGreaterThan(0);
    const safe = await planned({ ...LEAST, state: "madeSafe" });
    expect(safe.listPrice).toBeGreaterThan(found.listPrice);
  });

  test("values a find as its appraisal does, and sells it in the state that its course leads to", async () => {
    const { state: _, market: __, offer: ___, ...body } = exampleSale;
    const appraisal = await (await post("/v1/appraisals", body)).json<Appraisal>();
    for (const state of ["asFound", "madeSafe", "restored"] as const) {
      const { value, soldAs } = await planned({ ...body, state });
      expect(soldAs!.state).toBe(state);
      expect(soldAs).toMatchObject({
        roadworthy: appraisal.readiness.ready,
        blocking: appraisal.readiness.blocking,
        owed: appraisal.readiness.owed,
      });
      const { p10, p50, p90 } = appraisal.value![state]!;
      expect([value.p10, value.p50, value.p90]).toEqual([p10, p50, p90]);
    }
    expect((await planned(body)).soldAs!.state).toBe("asFound");
    expect(appraisal.decision.course).toBe("sell-as-found");
  });

  test("the month is the workshop's or the market's, and prices the bicycle for that month", async () => {
    const { workshop } = exampleSale;
    const own = await planned({ ...OF_FIND, workshop: { ...workshop, month: 5 } });
    const { month: _, ...shop } = workshop;
    const market = await planned({ ...OF_FIND, workshop: shop, market: { ...exampleSale.market, month: 5 } });
    expect(market).toEqual(own);
  });

  test("takings are before fees unless fees are given, by the market before the workshop", async () => {
    const none = await planned(OF_FIND);
    const fee = { rate: 0.1, fixed: 0 };
    const shop = await planned({ ...OF_FIND, workshop: { ...exampleSale.workshop, fee } });
    const both = await planned({
      ...OF_FIND,
      workshop: { ...exampleSale.workshop, fee: { rate: 0.3 } },
      market: { ...exampleSale.market, fee },
    });
    expect(none.market.fee).toEqual({ rate: 0, fixed: 0 });
    expect(shop.market.fee).toEqual(fee);
    expect(shop.expectedTakings).toBeLessThan(none.expectedTakings);
    expect(both.path).toEqual(shop.path);
  });

  test("an offer is answered: enough is accepted, a little less countered, far less left", async () => {
    const at = (amount: number) => planned({ ...ALONE, offer: { amount, week: 2 } });
    const plan = await at(100);
    const lowest = plan.path[1]!.lowestOffer;
    expect(plan.offer).toMatchObject({ answer: "wait", counter: null });
    expect((await at(lowest + 0.01)).offer).toMatchObject({ answer: "accept", counter: null });
    const { offer } = await at(lowest - 2);
    expect(offer).toMatchObject({ answer: "counter" });
    expect(offer!.counter!).toBeGreaterThan(lowest - 2);
    expect(offer!.counter!).toBeLessThan(plan.path[1]!.price);
    expect(offer!.reason).toContain("EUR");
    expect((await at(plan.path[1]!.price + 50)).offer).toMatchObject({ answer: "accept" });
  });

  test("in November it says to hold until spring where room costs little, and not where it costs much", async () => {
    const cheap = await planned({ ...ALONE, market: { month: 11, storagePerWeek: 0.5 } });
    expect([2, 3, 4]).toContain(cheap.holdUntil!.month);
    expect(cheap.holdUntil!.gain).toBeGreaterThan(0);
    expect((await planned({ ...ALONE, market: { month: 11, storagePerWeek: 12 } })).holdUntil).toBeNull();
    expect((await planned({ ...ALONE, market: { month: 5 } })).holdUntil).toBeNull();
    expect((await planned(ALONE)).holdUntil).toBeNull();
  });

  test("what was given for the fallback is what it falls back on", async () => {
    const { fallback } = await planned({ ...ALONE, market: { fallback: 77, weeks: 4 } });
    expect(fallback).toEqual({ kind: "given", amount: expect.closeTo(77, 9) });
  });
});

describe("is refused by field and remedy", () => {
  test.each<[string, object, string, RegExp]>([
    ["value and find both", { ...OF_FIND, value: VALUE }, "/value", /both given: leave one of them out/],
    ["neither", {}, "/value", /give the going rate, or describe the bicycle in find/],
    ["a state of a bare value", { ...ALONE, state: "asFound" }, "/state", /give find or leave it out/],
    ["a median below p10", { value: { ...VALUE, p50: 100 } }, "/value/p50", /at least p10, 160/],
    ["a p90 below the median", { value: { ...VALUE, p90: 100 } }, "/value/p90", /at least p50, 200/],
    [
      "a band that says nothing",
      { value: { p10: 1, p50: 10, p90: 5000 } },
      "/value/p90",
      /at most 10 times p10/,
    ],
    ["two months", { ...OF_FIND, market: { month: 9 } }, "/market/month", /give one of them, or both alike/],
    ["no weeks", { ...ALONE, market: { weeks: 0 } }, "/market/weeks", /at least 1/],
    ["an unknown term", { ...ALONE, market: { storage: 3 } }, "/market/storage", /not a field known here/],
    ["a week after the plan", { ...ALONE, offer: { amount: 90, week: 40 } }, "/offer/week", /1 to 12/],
    ["a state that is none", { ...OF_FIND, state: "parts" }, "/state", /must be one of/],
  ])("%s", async (_, body, pointer, message) => {
    const found = await faults(body);
    expect(found.map(([at]) => at)).toContain(pointer);
    expect(found.find(([at]) => at === pointer)![1]).toMatch(message);
  });

  test("prices of two currencies", async () => {
    const paid = { price: 100, kind: "paid", currency: "USD" };
    const found = await faults({ ...OF_FIND, comparables: [paid] });
    expect(found[0]![0]).toBe("/comparables/0/currency");
  });
});

describe("what may not be sold", () => {
  test("a find that is stopped is refused: no money figure is given", async () => {
    const body = { ...LEAST, observations: { serial: { level: "removed" } } };
    const [[pointer, message]] = (await faults(body)) as [[string, string]];
    expect(pointer).toBe("/find");
    expect(message).toMatch(/one that may be sold/);
  });

  test("a finished frame is not sold whole: only its parts may be", async () => {
    const body = { ...LEAST, observations: { "frame-cracks": { level: "crack-structural" } } };
    for (const state of ["asFound", "madeSafe", "restored"]) {
      const [[pointer, message]] = (await faults({ ...body, state })) as [[string, string]];
      expect(pointer).toBe("/state");
      expect(message).toMatch(/and only its parts may be/);
    }
  });

  test("a bare frame is not sold as rideable, but as found it may be", async () => {
    const body = { find: { ...LEAST.find, completeness: "frame-only" } };
    const [[pointer, message]] = (await faults({ ...body, state: "madeSafe" })) as [[string, string]];
    expect(pointer).toBe("/state");
    expect(message).toMatch(/asFound/);
    expect((await planned({ ...body, state: "asFound" })).soldAs).toMatchObject({ roadworthy: false });
  });

  test("a blocked bicycle is sold as found only as not roadworthy", async () => {
    const body = { ...LEAST, state: "asFound", observations: { "inner-cable": { level: "frayed" } } };
    expect((await planned(body)).soldAs).toMatchObject({ roadworthy: false, blocking: ["inner-cable"] });
  });
});
