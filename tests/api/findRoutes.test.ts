import { describe, expect, test } from "vitest";
import type * as z from "zod";
import { appraisalAnswer } from "../../worker/api/answers/appraisal.ts";
import { findingsAnswer } from "../../worker/api/answers/inspection.ts";
import { valuationAnswer } from "../../worker/api/answers/value.ts";
import type { Appraisal, FindingsAnswer, ValuationAnswer } from "../../worker/api/types.ts";
import { readCatalogue } from "../../worker/tables.ts";
import { post } from "./ask.ts";
import { described, FIND_ROUTES, GOOD, LEAST, seen } from "./bodies.ts";

async function answered<T>(path: string, body: unknown): Promise<T> {
  const answer = await post(path, body);
  expect(answer.status, await answer.clone().text()).toBe(200);
  expect(answer.headers.get("Content-Type")).toBe("application/json");
  return answer.json<T>();
}

const SCHEMAS: readonly [string, z.ZodType][] = [
  ["/v1/findings", findingsAnswer],
  ["/v1/valuations", valuationAnswer],
  ["/v1/appraisals", appraisalAnswer],
];

describe("the routes about one find", () => {
  test.each(SCHEMAS)("%s answers no field that its schema does not declare", async (path, schema) => {
    for (const body of [LEAST, GOOD, described({ category: "e-bike-out-of-scope" })]) {
      const answer = await answered(path, body);
      expect(schema.parse(answer)).toEqual(answer);
    }
  });

  test.each(FIND_ROUTES)("%s answers the same request with the same bytes", async (path) => {
    const first = await (await post(path, GOOD)).text();
    expect(await (await post(path, GOOD)).text()).toBe(first);
  });

  test.each(FIND_ROUTES)("%s says from which tables it comes", async (path) => {
    const { dataVersion } = await answered<{ dataVersion: string }>(path, LEAST);
    expect(dataVersion).toBe(readCatalogue().version);
  });

  test("the three agree: findings and value stand in the appraisal as in the answers of their own", async () => {
    const appraisal = await answered<Appraisal>("/v1/appraisals", GOOD);
    const findings = await answered<FindingsAnswer>("/v1/findings", GOOD);
    const valuation = await answered<ValuationAnswer>("/v1/valuations", GOOD);
    expect(appraisal).toMatchObject(findings);
    expect(appraisal.value).toEqual(valuation.value);
    expect(appraisal.decision.stop).toBe(valuation.stop);
  });

  test("the pieces of a bike broken for parts: what is listed brings its price by its chances less the fee", async () => {
    const { value } = await answered<Appraisal>("/v1/appraisals", LEAST);
    expect(value!.pieces.length).toBeGreaterThan(7);
    for (const { price, chanceUsable, chanceSold, fee, expected, listed, reason } of value!.pieces) {
      expect(price * chanceUsable * chanceSold - fee).toBeCloseTo(expected, 9);
      expect(reason === null).toBe(listed);
    }
  });

  test("a year stands for its era", async () => {
    const { era: _, ...find } = LEAST.find;
    for (const [year, era] of [
      [1880, "pre-1970"],
      [1969, "pre-1970"],
      [1970, "1970s"],
      [1999, "1990s"],
      [2000, "2000s"],
      [2030, "2020s"],
    ] as const) {
      const byYear = await answered("/v1/valuations", { find: { ...find, year } });
      expect(byYear).toEqual(await answered("/v1/valuations", described({ era })));
      expect(byYear).toEqual(await answered("/v1/valuations", described({ era, year })));
    }
  });

  test("the user's own prices move every state, and the answer says how", async () => {
    const before = (await answered<ValuationAnswer>("/v1/valuations", LEAST)).value!;
    expect(before).toMatchObject({ comparables: [], ownShare: 0 });
    const price = before.madeSafe!.p50 / 2;
    const sale = {
      kind: "paid",
      ageDays: 40,
      likeThis: true,
      condition: 0.75,
      era: "2000s",
      category: "hybrid",
    };
    const comparables = ["red one", "from the fair", undefined].map((id) => ({ ...sale, price, id }));
    const after = (await answered<ValuationAnswer>("/v1/valuations", { ...LEAST, comparables })).value!;
    for (const state of ["asFound", "madeSafe", "restored", "parts"] as const) {
      const share = after[state]!.p50 / before[state]!.p50;
      expect(share, state).toBeGreaterThan(0.45);
      expect(share, state).toBeLessThan(0.75);
    }
    expect(after.comparables.map(({ id }) => id)).toEqual(["red one", "from the fair", null]);
    expect(after.ownShare).toBeGreaterThan(0.4);
    expect(after.threeMore.state).toBe("madeSafe");
    expect(after.threeMore.now.p10).toBeCloseTo(after.madeSafe!.p10, 9);
    expect(after.threeMore.now.p90).toBeCloseTo(after.madeSafe!.p90, 9);
    const advert = { ...LEAST, comparables: [{ ...sale, kind: "asked", price }] };
    const asked = (await answered<ValuationAnswer>("/v1/valuations", advert)).value!;
    expect(asked.comparables[0]!.goingRate * asked.askedFactor).toBeCloseTo(price, 9);
    const appraisal = await answered<Appraisal>("/v1/appraisals", { ...LEAST, comparables });
    expect(appraisal.value).toEqual(after);
  });

  test("demo prices that are in another currency are said to be unconverted until priceLevel is given", async () => {
    const asked = async (body: object) =>
      (await answered<ValuationAnswer>("/v1/valuations", body)).unconverted;
    expect(await asked(LEAST)).toBe(false);
    expect(await asked({ ...LEAST, currency: "NOK" })).toBe(true);
    expect(await asked({ ...LEAST, currency: "NOK", workshop: { priceLevel: 11.5 } })).toBe(false);
  });

  test("a currency is repeated in every answer with money, the default where none was given", async () => {
    for (const path of ["/v1/valuations", "/v1/appraisals"]) {
      expect(await answered(path, LEAST)).toMatchObject({ currency: "EUR" });
      expect(await answered(path, { ...LEAST, currency: "NOK" })).toMatchObject({ currency: "NOK" });
    }
  });

  test.each([
    ["a kind that is out of scope", described({ category: "e-bike-out-of-scope" })],
    ["a serial number that was removed", seen("serial", { level: "removed" })],
  ])("%s is answered with a stop and without any figure", async (_, body) => {
    const { value, stop } = await answered<ValuationAnswer>("/v1/valuations", body);
    const appraisal = await answered<Appraisal>("/v1/appraisals", body);
    expect(value).toBeNull();
    expect(stop).not.toBeNull();
    expect(appraisal).toMatchObject({ value: null, courses: [] });
    expect(appraisal.decision).toMatchObject({
      course: "leave",
      walkAwayPrice: null,
      breakEvenSalePrice: null,
    });
    expect(appraisal.cautions.map(({ id }) => id)).toContain(appraisal.decision.stop);
  });

  test("an observation on a check that does not apply is answered with the reason, not refused", async () => {
    const body = {
      ...described({ frameMaterial: "steel" }),
      observations: { "carbon-damage": { level: "suspect" } },
    };
    const { ignored, findings } = await answered<FindingsAnswer>("/v1/findings", body);
    expect(ignored).toEqual([{ check: "carbon-damage", reason: expect.stringMatching(/./) }]);
    expect(findings).toEqual([]);
  });

  test("front and rear are told apart, and one answer without a wheel speaks for both", async () => {
    const apart = { front: { level: "good" }, rear: { level: "perished" } };
    const wheels = async (observation: unknown) => {
      const { findings } = await answered<FindingsAnswer>(
        "/v1/findings",
        seen("tyre-condition", observation),
      );
      return findings.map(({ position, level }) => `${position} ${level}`);
    };
    expect(await wheels(apart)).toEqual(["front good", "rear perished"]);
    expect(await wheels({ level: "perished" })).toEqual(["both perished"]);
  });
});
