import { describe, expect, test } from "vitest";
import { BODY_LIMIT_BYTES } from "../../worker/api/jsonBody.ts";
import type { FieldError } from "../../worker/api/problem.ts";
import { ERAS } from "../../worker/engine/bicycle.ts";
import type { ValuationAnswer } from "../../worker/engine/decision/valueFind.ts";
import { readCatalogue } from "../../worker/tables.ts";
import { ask, post } from "./ask.ts";
import { described, FIND_ROUTES, GOOD, LEAST, seen } from "./bodies.ts";
import { problemIn } from "./problemIn.ts";

async function errorsFor(body: unknown, path = "/v1/appraisals"): Promise<FieldError[]> {
  return (await problemIn(await post(path, body), 422)).errors ?? [];
}

async function pointersFor(body: unknown): Promise<string[]> {
  return (await errorsFor(body)).map(({ pointer }) => pointer);
}

describe("a request about one find that is not as the routes ask", () => {
  test.each(FIND_ROUTES)("%s names everything that is missing in one answer", async (path) => {
    const pointers = (await errorsFor({ find: {} }, path)).map(({ pointer }) => pointer).sort();
    expect(pointers).toEqual(["/find/category", "/find/componentTier", "/find/era", "/find/frameMaterial"]);
  });

  test("without era and year it is told what to give", async () => {
    const { era: _, ...find } = LEAST.find;
    expect(await errorsFor({ find })).toEqual([
      { pointer: "/find/era", message: expect.stringContaining("or give year"), allowed: [...ERAS] },
    ]);
  });

  test("an era and a year that do not agree are both named", async () => {
    const errors = await errorsFor(described({ era: "1980s", year: 1994 }));
    expect(errors.map(({ pointer }) => pointer)).toEqual(["/find/era", "/find/year"]);
    for (const { message } of errors) expect(message).toMatch(/1980s.*1994.*1990s/);
  });

  test.each([
    [{ year: 1879 }, "/find/year"],
    [{ year: 2031 }, "/find/year"],
    [{ year: 1984.5 }, "/find/year"],
    [{ originality: 1.1 }, "/find/originality"],
    [{ desirability: -0.1 }, "/find/desirability"],
    [{ rearSprockets: 0 }, "/find/rearSprockets"],
    [{ rearSprockets: 15 }, "/find/rearSprockets"],
    [{ beadSeatDiameterMm: 5 }, "/find/beadSeatDiameterMm"],
    [{ purchase: { price: -1 } }, "/find/purchase/price"],
    [{ purchase: { travelMinutes: 1e300 } }, "/find/purchase/travelMinutes"],
    [{ soFar: { money: "30" } }, "/find/soFar/money"],
    [{ soFar: { finished: ["wash"] } }, "/find/soFar/finished"],
    [{ soFar: { done: ["wsh"] } }, "/find/soFar/done/0"],
    [{ soFar: { bought: [{ part: "chian" }] } }, "/find/soFar/bought/0/part"],
    [{ soFar: { bought: [{ part: "chain", quantity: 0 }] } }, "/find/soFar/bought/0/quantity"],
    [{ soFar: { bought: [{ part: "chain", reuseValue: -1 }] } }, "/find/soFar/bought/0/reuseValue"],
    [{ missingParts: ["no-such-part"] }, "/find/missingParts/0"],
    [{ tyreMarking: "" }, "/find/tyreMarking"],
    [{ tyreMarking: "round and black" }, "/find/tyreMarking"],
    [{ hasCarbon: "no", forkMaterial: "carbon" }, "/find/hasCarbon"],
  ])("the description %j is refused at %s", async (words, pointer) => {
    const { era: _, ...find } = LEAST.find;
    const era = "year" in words ? {} : { era: "2000s" };
    expect(await pointersFor({ find: { ...find, ...era, ...words } })).toEqual([pointer]);
  });

  test("work and parts that nobody knows are refused with the name that comes near", async () => {
    const soFar = { done: ["wash", "new-chian"], bought: [{ part: "seatpots" }] };
    expect(await errorsFor(described({ era: "1980s", soFar }))).toEqual([
      {
        pointer: "/find/soFar/done/1",
        message: expect.stringContaining("did you mean new-chain"),
        allowed: expect.arrayContaining(["new-chain"]),
      },
      {
        pointer: "/find/soFar/bought/0/part",
        message: expect.stringContaining("did you mean seatpost"),
        allowed: expect.arrayContaining(["seatpost"]),
      },
    ]);
  });

  test.each([
    [{ hourlyGoal: -1 }, "/workshop/hourlyGoal"],
    [{ speedFactor: 0 }, "/workshop/speedFactor"],
    [{ skill: 5 }, "/workshop/skill"],
    [{ tools: ["no-such-tool"] }, "/workshop/tools/0"],
    [{ fee: { rate: 1 } }, "/workshop/fee/rate"],
    [{ month: 13 }, "/workshop/month"],
    [{ month: 0 }, "/workshop/month"],
    [{ partPrices: { "no-such-part": 3 } }, "/workshop/partPrices/no-such-part"],
    [{ partPrices: { chain: -3 } }, "/workshop/partPrices/chain"],
    [{ priceLevel: 0 }, "/workshop/priceLevel"],
  ])("the workshop %j is refused at %s", async (workshop, pointer) => {
    expect(await pointersFor({ ...LEAST, workshop })).toEqual([pointer]);
  });

  test("an unknown currency is answered with the currencies", async () => {
    const [error] = await errorsFor({ ...LEAST, currency: "eur" });
    expect(error).toMatchObject({
      pointer: "/currency",
      message: expect.stringContaining("did you mean EUR"),
    });
    expect(error?.allowed).toContain("EUR");
  });

  const comparable = (words: object) => ({ ...LEAST, comparables: [{ price: 210, kind: "paid", ...words }] });

  test.each([
    [{ price: 0 }, "/comparables/0/price"],
    [{ price: 0.001 }, "/comparables/0/price"],
    [{ price: -5 }, "/comparables/0/price"],
    [{ kind: "offered" }, "/comparables/0/kind"],
    [{ ageDays: -1 }, "/comparables/0/ageDays"],
    [{ condition: 1.2 }, "/comparables/0/condition"],
    [{ condition: 0.5, state: "does-not-ride" }, "/comparables/0/condition"],
    [{ category: "e-bike-out-of-scope" }, "/comparables/0/category"],
    [{ currency: "USD" }, "/comparables/0/currency"],
    [{ colour: "green" }, "/comparables/0/colour"],
  ])("the comparable %j is refused at %s", async (words, pointer) => {
    expect(await pointersFor(comparable(words))).toEqual([pointer]);
  });

  test("a comparable's era and year that do not agree are both named", async () => {
    expect(await pointersFor(comparable({ era: "1980s", year: 1994 }))).toEqual([
      "/comparables/0/era",
      "/comparables/0/year",
    ]);
  });

  test("currencies are never mixed: the remedy is told", async () => {
    const [foreign] = await errorsFor({
      ...comparable({ currency: "EUR" }),
      currency: "NOK",
      workshop: { priceLevel: 11 },
    });
    expect(foreign?.message).toMatch(/EUR.*NOK: convert/);
    const errors = await errorsFor({ ...comparable({}), currency: "NOK" });
    expect(errors).toEqual([
      {
        pointer: "/workshop/priceLevel",
        message: expect.stringMatching(/comparables in NOK.*demo prices in EUR/),
      },
    ]);
  });

  test("more comparables than five thousand are refused, so many are answered one by one", async () => {
    const many = (count: number) => ({
      ...LEAST,
      comparables: Array.from({ length: count }, (_, index) => ({ price: 100 + index / 50, kind: "paid" })),
    });
    expect(await pointersFor(many(5001))).toEqual(["/comparables"]);
    const answer = await post("/v1/valuations", many(5000));
    expect(answer.status).toBe(200);
    const { value } = (await answer.json()) as ValuationAnswer;
    expect(value!.comparables).toHaveLength(5000);
  });

  test("fields of later versions are refused by name", async () => {
    expect(await pointersFor({ ...LEAST, budgets: {}, goals: 1 })).toEqual(["/budgets", "/goals"]);
  });

  test("a misspelt field is named with what it may stand for", async () => {
    expect(await errorsFor(described({ frame_size_mm: 480, brakeTypes: "drum" }))).toEqual([
      expect.objectContaining({
        pointer: "/find/frame_size_mm",
        message: expect.stringContaining("frameSizeMm"),
      }),
      expect.objectContaining({ pointer: "/find/brakeTypes", message: expect.stringContaining("brakeType") }),
    ]);
  });

  test("a misspelt value is named with what it may stand for", async () => {
    expect(await errorsFor(described({ frameMaterial: "aluminum" }))).toEqual([
      {
        pointer: "/find/frameMaterial",
        message:
          'frameMaterial must be one of "steel", "aluminium", "carbon", "titanium", not "aluminum"; did you mean aluminium?',
        allowed: ["steel", "aluminium", "carbon", "titanium"],
      },
    ]);
  });

  test("however much is wrong, the answer stays short", async () => {
    const unknown = Object.fromEntries(Array.from({ length: 5000 }, (_, at) => [`field-${at}`, at]));
    const problem = await problemIn(await post("/v1/appraisals", { ...LEAST, ...unknown }), 422);
    expect(problem.errors).toHaveLength(100);
    expect(problem.detail).toContain("100 fields or more");
  });
});

describe("observations that cannot be", () => {
  test("a misspelt check is named with the checks it may stand for and all that there are", async () => {
    const [error] = await errorsFor(seen("rim-sidewal", { level: "ok" }));
    expect(error).toMatchObject({
      pointer: "/observations/rim-sidewal",
      message: expect.stringContaining("rim-sidewall"),
    });
    expect(error?.allowed).toEqual(readCatalogue().inspection.checks.map(({ id }) => id));
  });

  test.each([
    [
      "a level that the check does not have",
      "tyre-condition",
      { level: "round" },
      "/observations/tyre-condition/level",
    ],
    [
      "such a level at one wheel",
      "tyre-condition",
      { rear: { level: "round" } },
      "/observations/tyre-condition/rear/level",
    ],
    [
      "an input that the check does not have",
      "chain",
      { measured: { links: 24 } },
      "/observations/chain/measured/links",
    ],
    [
      "a measured value that is missing",
      "rear-alignment",
      { measured: { left: 41 } },
      "/observations/rear-alignment/measured/right",
    ],
    ["a flag that the check does not have", "hanger", { flags: ["gone"] }, "/observations/hanger/flags/0"],
    ["a reading that says nothing", "chain", {}, "/observations/chain"],
    ["a wheel that says nothing", "tyre-condition", { front: {} }, "/observations/tyre-condition/front"],
    ["a misspelt field of a reading", "chain", { levle: "ok" }, "/observations/chain/levle"],
    [
      "a misspelt field at one wheel",
      "tyre-condition",
      { front: { levle: "good" } },
      "/observations/tyre-condition/front/levle",
    ],
    [
      "a measured value that is text",
      "chain",
      { measured: { length24: "307" } },
      "/observations/chain/measured/length24",
    ],
    ["a reading that is text", "chain", "worn", "/observations/chain"],
    [
      "one wheel of a check of the whole bicycle",
      "frame-cracks",
      { front: { level: "none" } },
      "/observations/frame-cracks/front",
    ],
  ])("%s is refused at its place", async (_, check, observation, pointer) => {
    expect(await pointersFor(seen(check, observation))).toEqual([pointer]);
  });

  test("a chain shorter than new by more than 1 % is refused with the reason (24 pitches of 12.7 mm, ISO 606)", async () => {
    expect(await errorsFor(seen("chain", { measured: { length24: 301 } }))).toEqual([
      {
        pointer: "/observations/chain/measured/length24",
        message: expect.stringContaining("never shorter than new"),
      },
    ]);
    expect((await post("/v1/findings", seen("chain", { measured: { length24: 304 } }))).status).toBe(200);
  });

  test("a negative distance is refused with the reason", async () => {
    const [error] = await errorsFor(seen("rear-alignment", { measured: { left: -41, right: 40 } }));
    expect(error).toMatchObject({ pointer: "/observations/rear-alignment/measured/left" });
    expect(error?.message).toMatch(/from \d+ to \d+ mm.*measure again/);
  });
});

describe("what is no request about one find", () => {
  test.each(FIND_ROUTES)("%s refuses what is not JSON, not declared as JSON, or too long", async (path) => {
    const send = (body: string, type = "application/json") =>
      ask(path, { method: "POST", headers: { "Content-Type": type }, body });
    await problemIn(await send('{"find":'), 400);
    await problemIn(await send(""), 400);
    await problemIn(await send(JSON.stringify(GOOD), "text/plain"), 415);
    const long = JSON.stringify(GOOD).padEnd(BODY_LIMIT_BYTES + 1);
    await problemIn(await send(long), 413);
    expect((await send(long.slice(0, -1))).status).toBe(200);
  });

  test.each(FIND_ROUTES)("%s answers GET with the method it takes", async (path) => {
    const answer = await ask(path);
    expect(answer.headers.get("Allow")).toBe("POST");
    await problemIn(answer, 405);
  });
});
