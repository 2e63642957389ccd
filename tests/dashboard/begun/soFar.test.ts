import { describe, expect, test } from "vitest";
import { answersOf } from "../../../dashboard/answers/answersOf.ts";
import { parsedAnswers } from "../../../dashboard/answers/parsed.ts";
import {
  isBlank,
  NOTHING_SO_FAR,
  type SoFar,
  withBought,
  withDone,
  withSoFar,
  withSpent,
} from "../../../dashboard/answers/soFar.ts";
import type { AppraisalBody, PlannedOperation, PlannedPart } from "../../../dashboard/api/types.ts";
import { jobRows, keptOrder, thingRows } from "../../../dashboard/begun/rows.ts";
import { openOwnFinds } from "../../../dashboard/finds/own.ts";
import { begunWords, spentWords } from "../../../dashboard/words/soFar.ts";

const chain = { part: "chain", quantity: 1, reuseValue: 6 };
const BEGUN: SoFar = { money: 30, minutes: 120, done: ["wash"], bought: [chain] };
const known = {
  operations: [
    { id: "wash", name: "Wash, look again" },
    { id: "true-wheel", name: "True wheels" },
  ],
  parts: [
    { id: "chain", name: "Chain", unit: "each", kind: "part" },
    { id: "grease", name: "Grease", unit: "dose", kind: "consumable" },
  ],
} as unknown as Parameters<typeof withSoFar>[2];

describe("the job so far", () => {
  test("takes money, minutes, work and parts, and gives them back", () => {
    let soFar = withSpent(NOTHING_SO_FAR, "money", 30);
    soFar = withDone(withSpent(soFar, "minutes", 120), "wash", true);
    soFar = withBought(soFar, "chain", { quantity: 1, reuseValue: 0 });
    soFar = withBought(soFar, "chain", { quantity: 1, reuseValue: 6 });
    expect(soFar).toEqual(BEGUN);
    expect(withDone(soFar, "wash", true).done).toEqual(["wash"]);
    soFar = withBought(withDone(soFar, "wash", false), "chain", null);
    soFar = withSpent(withSpent(soFar, "money", undefined), "minutes", undefined);
    expect(isBlank(soFar)).toBe(true);
  });

  test("goes with the question, without what the catalogue does not hold; where there is none, the question stays", () => {
    const body = { find: { category: "hybrid" }, workshop: { hourlyGoal: 12 } } as AppraisalBody;
    const old = { ...BEGUN, done: ["wash", "gone"], bought: [chain, { ...chain, part: "gone" }] };
    expect(withSoFar(body, old, known)).toEqual({
      find: { category: "hybrid", soFar: BEGUN },
      workshop: { hourlyGoal: 12 },
    });
    expect(withSoFar(body, undefined, known)).toBe(body);
    expect(withSoFar(body, NOTHING_SO_FAR, known)).toBe(body);
  });

  test("is copied with a find that is asked what if", () => {
    const asked = {
      find: { soFar: { money: 5, done: ["wash"], bought: [{ part: "chain" }] } },
    } as AppraisalBody;
    expect(answersOf(asked).soFar).toEqual({
      money: 5,
      done: ["wash"],
      bought: [{ part: "chain", quantity: 1, reuseValue: 0 }],
    });
    expect(answersOf({ find: {} } as AppraisalBody)).not.toHaveProperty("soFar");
  });
});

describe("the job so far, kept in the browser", () => {
  test("is read back as it was written", () => {
    expect(parsedAnswers(JSON.parse(JSON.stringify({ soFar: BEGUN }))).soFar).toEqual(BEGUN);
  });

  test("is absent from finds that were kept before there was one", () => {
    const kept = {
      version: 1,
      finds: [{ id: "own-1", name: "Hill bike", answers: { attributes: {}, observations: {} } }],
    };
    const finds = openOwnFinds({ read: () => ({ value: kept }), write: () => true });
    expect(finds.trouble.value).toBeNull();
    expect(finds.get("own-1")?.answers).toEqual({ attributes: {}, observations: {} });
  });

  test("keeps what has the right shape, and leaves out the rest", () => {
    const damaged = {
      money: "30",
      minutes: -4,
      done: ["wash", 7, "wash", ""],
      bought: [{ part: "chain", quantity: 0, reuseValue: -1 }, { quantity: 2 }, null],
    };
    expect(parsedAnswers({ soFar: damaged }).soFar).toEqual({
      done: ["wash"],
      bought: [{ part: "chain", quantity: 1, reuseValue: 0 }],
    });
    expect(parsedAnswers({ soFar: 4 })).not.toHaveProperty("soFar");
  });
});

describe("the rows to tick", () => {
  const job = (operation: string, minutes: number) =>
    ({ operation, name: operation, minutes }) as PlannedOperation;
  const thing = (part: string, quantity = 1) =>
    ({ part, name: part, unit: "each", quantity, price: 4 }) as PlannedPart;

  test("keep their order, so that nothing moves under the hand that ticked it", () => {
    expect(keptOrder(["b", "a"], ["a", "b", "c"])).toEqual(["b", "a", "c"]);
    expect(keptOrder(["b", "a"], ["a"])).toEqual(["a"]);
  });

  test("hold an operation once for both wheels, and one that is done though no plan holds it, by its name", () => {
    const planned = [job("true-wheel", 20), job("true-wheel", 25)];
    expect(jobRows(["true-wheel", "wash"], planned, ["wash"], known)).toEqual([
      { operation: "true-wheel", name: "True wheels", done: false, minutes: 45 },
      { operation: "wash", name: "Wash, look again", done: true, minutes: null },
    ]);
    expect(jobRows([], planned, [], known).map(({ operation }) => operation)).toEqual(["true-wheel"]);
  });

  test("hold what is to be bought and what was, tools and delivery left out", () => {
    const shopping = [thing("grease", 2), thing("delivery"), thing("puller")];
    expect(thingRows([], shopping, [chain], known)).toEqual([
      { part: "chain", name: "Chain", unit: "each", bought: chain, needed: null },
      { part: "grease", name: "Grease", unit: "dose", bought: null, needed: thing("grease", 2) },
    ]);
  });
});

describe("the words for it", () => {
  test("tell what was spent, and what is done and bought", () => {
    expect(spentWords({ money: 30, hours: 2 }, "EUR")).toBe("Already spent €30 and 2 h");
    expect(spentWords({ money: 0, hours: 1.5 }, "EUR")).toBe("Already spent 1.5 h");
    expect(spentWords({ money: 0, hours: 0 }, "EUR")).toBeNull();
    const told = (done: number, bought: number, money: number, hours: number) =>
      begunWords({ done: Array(done), bought: Array(bought), money, hours }, "EUR");
    expect(told(3, 1, 30, 2)).toBe("three jobs done, one part bought, €30 and 2 h spent");
    expect(told(0, 0, 0, 0)).toBe("nothing yet");
  });
});
