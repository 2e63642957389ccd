import { describe, expect, test } from "vitest";
import { comparisonAnswer } from "../../worker/api/answers/comparison.ts";
import { exampleComparison } from "../../worker/api/routes/exampleComparison.ts";
import type {
  Appraisal,
  ComparedFind,
  ComparisonAnswer,
  ComparisonBody,
  FindProblem,
  Problem,
} from "../../worker/api/types.ts";
import { post } from "./ask.ts";
import { problemIn } from "./problemIn.ts";

const PATH = "/v1/comparisons";
type Entry = ComparisonBody["finds"][number];
const GOOD: ComparisonBody = exampleComparison;
const [FIRST, SECOND, ...OTHERS] = exampleComparison.finds as unknown as readonly [Entry, Entry, ...Entry[]];

async function answered(body: unknown): Promise<ComparisonAnswer> {
  const answer = await post(PATH, body);
  expect(answer.status, await answer.clone().text()).toBe(200);
  return answer.json<ComparisonAnswer>();
}

const withFinds = (...finds: unknown[]) => ({ ...GOOD, finds });
const isProblem = (find: ComparedFind | FindProblem): find is FindProblem => "problem" in find;

function problemOf({ finds }: ComparisonAnswer, index: number): Problem {
  const find = finds[index]!;
  expect(isProblem(find)).toBe(true);
  return (find as FindProblem).problem;
}

describe("POST /v1/comparisons", () => {
  test("answers no field that its schema does not declare", async () => {
    const bad = withFinds(FIRST, { find: { category: "hybrid" } }, { ...SECOND, course: "leave" });
    for (const body of [GOOD, bad, { finds: [FIRST] }, { ...GOOD, budgets: { slots: 0 } }]) {
      const answer = await answered(body);
      expect(comparisonAnswer.parse(answer)).toEqual(answer);
    }
  });

  test("answers the same request with the same bytes", async () => {
    const first = await (await post(PATH, GOOD)).text();
    expect(await (await post(PATH, GOOD)).text()).toBe(first);
  });

  test("says of each find what its own appraisal says", async () => {
    const { finds } = await answered(GOOD);
    for (const [index, sent] of exampleComparison.finds.entries()) {
      const own = await (
        await post("/v1/appraisals", { currency: GOOD.currency, workshop: GOOD.workshop, ...sent })
      ).json<Appraisal>();
      const { id, value, courses, ...same } = finds[index] as ComparedFind;
      expect(id).toBe(sent.find.id);
      expect(own).toMatchObject(same);
      expect(own.value).toMatchObject(value!);
      expect(own.courses).toMatchObject(courses);
      for (const course of courses) expect(course).not.toHaveProperty("plan");
    }
  });

  test("stays within the budgets and says what the set comes to", async () => {
    const { chosen, total, finds, proven, meritOrder } = await answered(GOOD);
    expect(proven).toBe(true);
    const courses = chosen.map(({ id, course }) => {
      const find = finds.find((one) => one.id === id) as ComparedFind;
      return find.courses.find((one) => one.course === course)!;
    });
    const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
    expect(total!.hours).toBeCloseTo(sum(courses.map(({ hours }) => hours!.mean)), 9);
    expect(total!.cash).toBeCloseTo(sum(courses.map(({ cashNeeded }) => cashNeeded!)), 9);
    expect(total!.slots).toBe(chosen.length);
    expect(total!.hours).toBeLessThanOrEqual(8);
    expect(total!.cash).toBeLessThanOrEqual(150);
    expect(total!.slots).toBeLessThanOrEqual(2);
    expect(meritOrder.filter((one) => one.chosen).map(({ id, course }) => ({ id, course }))).toEqual(chosen);
  });

  test("maximises the margin where it is asked to", async () => {
    const net = await answered(GOOD);
    const margin = await answered({ ...GOOD, objective: "margin" });
    expect(margin.objective).toBe("margin");
    expect(margin.total!.margin).toBeGreaterThanOrEqual(net.total!.margin - 1e-9);
    expect(net.total!.netBenefit).toBeGreaterThanOrEqual(margin.total!.netBenefit - 1e-9);
  });

  test("without budgets takes what pays, and needs no more", async () => {
    const { budgets, chosen, finds, nextIn, chanceHoursOverrun } = await answered({ finds: GOOD.finds });
    expect(budgets).toEqual({ hours: null, cash: null, slots: null });
    expect(chosen.length).toBe(
      finds.filter((find) => !isProblem(find) && find.decision.course !== "leave").length,
    );
    expect({ nextIn, chanceHoursOverrun }).toEqual({ nextIn: null, chanceHoursOverrun: 0 });
  });

  test("takes two hundred finds, and says how near its set comes to the best there can be", async () => {
    const finds = Array.from({ length: 200 }, (_, index) => {
      const { find, observations } = [FIRST, SECOND][index % 2]!;
      const purchase = { price: 5 + (index % 37), travelMinutes: index % 23 };
      return { find: { ...find, id: `find ${index}`, purchase }, observations };
    });
    const { chosen, total, gap, meritOrder } = await answered({
      ...GOOD,
      finds,
      budgets: { hours: 60, cash: 900, slots: 20 },
    });
    // A hundred nearly alike of each of two: the search ends before it has proved its set, which was 1 in 100 from its bound.
    expect(gap).toBeLessThanOrEqual(0.02 * total!.netBenefit);
    expect(chosen.length).toBeGreaterThan(10);
    expect(meritOrder.length).toBe(200);
    // The longest test there is: each find is advised on.
  }, 180_000);

  test("sells a find in its own month where it names one, else in the workshop's", async () => {
    const [own, other] = (await answered(withFinds({ ...FIRST, month: 11 }, SECOND))).finds as ComparedFind[];
    const november = await answered({
      ...withFinds(FIRST, SECOND),
      workshop: { ...GOOD.workshop, month: 11 },
    });
    const april = await answered(withFinds(FIRST, SECOND));
    expect(own).toEqual(november.finds[0]);
    expect(own).not.toEqual(april.finds[0]);
    expect(other).toEqual(april.finds[1]);
  });

  test("tells prices of the request to every find, and a find's own to it alone", async () => {
    const sale = {
      price: 400,
      kind: "paid",
      category: "touring",
      era: "1980s",
      frameMaterial: "steel",
      componentTier: "mid",
    };
    const value = async (body: unknown, index: number) =>
      ((await answered(body)).finds[index] as ComparedFind).value!;
    const plain = await value(GOOD, 0);
    const shared = await value({ ...GOOD, comparables: [sale] }, 0);
    const own = await value(withFinds({ ...FIRST, comparables: [sale] }, SECOND, ...OTHERS), 0);
    expect(shared.ownShare).toBeGreaterThan(plain.ownShare);
    expect(own).toEqual(shared);
    expect(await value(withFinds({ ...FIRST, comparables: [sale] }, SECOND), 1)).toEqual(
      await value(GOOD, 1),
    );
  });
});

describe("one bad find among several", () => {
  test("is told by its pointer, and the rest are answered as if it were not there", async () => {
    const spoilt = { find: { ...SECOND.find, era: "1890s", colour: "red" } };
    const answer = await answered(withFinds(FIRST, spoilt, ...OTHERS));
    const { status, errors } = problemOf(answer, 1);
    expect(status).toBe(422);
    expect(errors!.map(({ pointer }) => pointer).toSorted()).toEqual([
      "/finds/1/find/colour",
      "/finds/1/find/era",
    ]);
    expect(answer.finds[1]!.id).toBe(SECOND.find.id);
    const { finds, ...set } = await answered(withFinds(FIRST, ...OTHERS));
    expect(answer.finds.filter((find) => !isProblem(find))).toEqual(finds);
    expect(answer).toMatchObject(set);
  });

  test("may be refused by the engine: a measurement that cannot be, a level that is not there", async () => {
    const chain = { ...FIRST, observations: { chain: { measured: { length24: 200 } } } };
    const level = { ...SECOND, observations: { serial: { level: "blurred" } } };
    const answer = await answered(withFinds(chain, level, ...OTHERS));
    expect(problemOf(answer, 0).errors![0]!.pointer).toMatch(/^\/finds\/0\/observations\/chain/);
    expect(problemOf(answer, 1).errors![0]!.pointer).toMatch(/^\/finds\/1\/observations\/serial/);
    expect(answer.finds.slice(2).some(isProblem)).toBe(false);
  });

  test.each([null, 7, "a bike", [], {}])("may be no find at all (%j)", async (nonsense) => {
    const answer = await answered(withFinds(FIRST, nonsense));
    expect(answer.finds[1]!.id).toBe("/finds/1");
    expect(problemOf(answer, 1).errors!.length).toBeGreaterThan(0);
  });

  test("with the label of another is refused; one without goes by its pointer", async () => {
    const { id: _, ...unnamed } = FIRST.find;
    const answer = await answered(withFinds(FIRST, FIRST, { ...FIRST, find: unnamed }));
    expect(problemOf(answer, 1).errors![0]!.pointer).toBe("/finds/1/find/id");
    expect(answer.finds[2]).toMatchObject({ id: "/finds/2" });
  });

  test("locked to a course that is closed to it says why", async () => {
    const cracked = {
      find: SECOND.find,
      observations: { "frame-cracks": { level: "crack-structural" } },
      course: "restore",
    };
    const answer = await answered(withFinds(FIRST, cracked));
    const [fault] = problemOf(answer, 1).errors!;
    expect(fault!.pointer).toBe("/finds/1/course");
    expect(fault!.message).toContain("restore is not");
  });

  test("all of them bad, is still no failure of the request", async () => {
    const { finds, chosen, total, meritOrder } = await answered(withFinds({}, { find: 3 }));
    expect(finds.every(isProblem)).toBe(true);
    expect({ chosen, meritOrder }).toEqual({ chosen: [], meritOrder: [] });
    expect(total).toMatchObject({ netBenefit: 0, hours: 0 });
  });
});

describe("a course taken in any case", () => {
  test("is in the set", async () => {
    const taken = (await answered(GOOD)).chosen.map(({ id }) => id);
    const left = GOOD.finds.find(({ find }) => !taken.includes(find.id!))!;
    const finds = GOOD.finds.map((one) => (one === left ? { ...one, course: "sell-as-found" } : one));
    const { chosen } = await answered(withFinds(...finds));
    expect(chosen).toContainEqual({ id: left.find.id, course: "sell-as-found" });
  });

  test("that does not fit is explained, and the finds are answered all the same", async () => {
    const locked = withFinds({ ...FIRST, course: "make-safe" }, ...OTHERS);
    const { overruns, total, finds, meritOrder } = await answered({
      ...locked,
      budgets: { hours: 1, slots: 0 },
    });
    expect(total).toBeNull();
    expect(overruns.map(({ budget }) => budget)).toEqual(["hours", "slots"]);
    expect(overruns[0]!.explanation).toMatch(/hours/);
    expect(finds.some(isProblem)).toBe(false);
    expect(meritOrder.length).toBeGreaterThan(0);
  });
});

describe("a request that is wrong as a whole is refused as a whole", () => {
  test.each([
    [{ finds: [] }, "/finds"],
    [{ finds: Array.from({ length: 201 }, () => FIRST) }, "/finds"],
    [{}, "/finds"],
    [{ ...GOOD, objective: "fun" }, "/objective"],
    [{ ...GOOD, budgets: { hours: -1 } }, "/budgets/hours"],
    [{ ...GOOD, budgets: { slots: 1.5 } }, "/budgets/slots"],
    [{ ...GOOD, budgets: { hour: 8 } }, "/budgets/hour"],
    [{ ...GOOD, workshop: { hourlyGoal: "ten" } }, "/workshop/hourlyGoal"],
    [{ ...GOOD, currency: "EURO" }, "/currency"],
    [{ ...GOOD, comparables: [{ price: 9, kind: "paid", currency: "USD" }] }, "/comparables/0/currency"],
  ])("%#", async (body, pointer) => {
    const { errors } = await problemIn(await post(PATH, body), 422);
    expect(errors!.map((one) => one.pointer)).toContain(pointer);
  });

  test("more prices times finds than are worked out at once are refused with the number", async () => {
    const sale = { price: 100, kind: "paid" };
    const finds = Array.from({ length: 50 }, (_, index) => ({ find: { ...FIRST.find, id: `${index}` } }));
    const comparables = Array.from({ length: 401 }, () => sale);
    const { errors } = await problemIn(await post(PATH, { finds, comparables }), 422);
    expect(errors![0]).toMatchObject({ pointer: "/comparables" });
    expect(errors![0]!.message).toContain("20050");
    const own = finds.map((find) => ({ ...find, comparables }));
    expect((await problemIn(await post(PATH, { finds: own }), 422)).errors).toMatchObject([
      { pointer: "/comparables", message: expect.stringContaining("20050") },
    ]);
  });

  test("prices in another currency need a price level, told once at its field", async () => {
    const sale = { price: 100, kind: "paid" };
    const one = { ...FIRST, comparables: [sale] };
    const answer = await answered({ ...withFinds(one, SECOND), currency: "USD" });
    expect(problemOf(answer, 0).errors![0]!.pointer).toBe("/workshop/priceLevel");
    expect(isProblem(answer.finds[1]!)).toBe(false);
  });
});
