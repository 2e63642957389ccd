import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ReportedPlan } from "../../../worker/engine/decision/appraisal.ts";
import type { Report } from "../../../worker/engine/decision/appraise.ts";
import { likelyFind } from "../properties/anyFind.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { plainAnswer } from "./plainAnswer.ts";
import { BOOK } from "./shippedBook.ts";

const SEED = 20261125;
const plansIn = ({ courses }: Report) => courses.flatMap(({ plan }) => (plan === null ? [] : [plan]));
const planOf = (found: Found, course = "make-safe"): ReportedPlan =>
  plainAnswer(lookedOver(found)).courses.find((one) => one.course === course)!.plan!;
const operationIn = (plan: ReportedPlan, id: string) =>
  plan.operations.find(({ operation }) => operation === id)!;
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** Whether two amounts agree to nine digits: prices may run to thousands, minutes to hundreds. */
function expectSame(found: number, wanted: number): void {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));
}

/** Everything that a plan says of its sums, held against its own lines. */
function expectConsistent(plan: ReportedPlan): void {
  const { operations, sharedSteps, shoppingList, minutes, cost } = plan;
  expectSame(
    minutes.mean,
    total(operations.map((one) => one.minutes)) + total(sharedSteps.map((one) => one.minutes)),
  );
  const spent = shoppingList.map(({ quantity, price }) => quantity * price);
  expectSame(cost.mean, total(spent));
  const used = operations.flatMap(({ parts }) => parts);
  const listed = shoppingList.filter(({ kind }) => kind !== "tool" && kind !== "delivery");
  expect(listed.map(({ part }) => part).sort()).toEqual([...new Set(used.map(({ part }) => part))].sort());
  for (const { part, quantity } of listed)
    expectSame(quantity, total(used.filter((one) => one.part === part).map((one) => one.quantity)));
  for (const { p10, p50, p90 } of [minutes, cost]) {
    expect(p10).toBeLessThanOrEqual(p50);
    expect(p50).toBeLessThanOrEqual(p90);
  }
}

describe("a plan as it is told", () => {
  const cases = CASES.filter(({ expect: { stop } }) => !stop);

  test.each(cases.map((one) => [one.id, one] as const))(
    "%s: minutes are those of its operations and shared steps, cost and shopping list those of its parts",
    (_, one) => {
      for (const plan of plansIn(plainAnswer(requestOf(one)))) expectConsistent(plan);
    },
  );

  test("so it is on any bike, at any speed and with any prices and tools", () => {
    fc.assert(
      fc.property(likelyFind, (request) => {
        for (const plan of plansIn(plainAnswer(request))) expectConsistent(plan);
      }),
      { seed: SEED, numRuns: 75 },
    );
  });

  test("names what each operation is for, and how urgent that is", () => {
    const found: Found = {
      bike: { componentTier: "upper" },
      found: { "inner-cable": "frayed", chain: "gone", finish: "marked" },
    };
    const plan = planOf(found, "restore");
    expect(operationIn(plan, "new-brake-cables")).toMatchObject({
      because: ["inner-cable"],
      kind: "required",
    });
    expect(operationIn(plan, "new-chain")).toMatchObject({ because: ["chain"], kind: "needed" });
    expect(operationIn(plan, "touch-up")).toMatchObject({ because: ["finish"], kind: "optional" });
    // The polish serves no fault: a restoration may leave it out, its papers not.
    expect(operationIn(plan, "polish")).toMatchObject({ because: [], kind: "optional" });
    expect(operationIn(plan, "query-serial")).toMatchObject({ because: [], kind: "required" });
  });

  test("an operation for two faults takes the stronger need", () => {
    const worn = { "tyre-condition": "fine-cracks", "tyre-age": "old" };
    const { because, kind } = operationIn(planOf({ found: worn }), "new-tyres");
    expect([...because].sort()).toEqual(["tyre-age", "tyre-condition"]);
    const level = (check: string, id: string) =>
      BOOK.checks.get(check)!.levels.find((one) => one.id === id)!.safety;
    expect([level("tyre-condition", "fine-cracks"), level("tyre-age", "old")]).toEqual(["advisory", "block"]);
    expect(kind).toBe("required");
  });

  test("work on a fault that nobody saw, only likely, says so; work on one that was seen does not", () => {
    const old: Found = { bike: { era: "1970s", kept: "outdoors", componentTier: "upper" } };
    // Sound parts all round would speak for the tyres too: of weather and neglect nobody saw anything but the tyres' age.
    const { loadings } = BOOK.catalogue.inspection.history;
    const unseen = loadings
      .filter(({ check, weather, neglect }) => check !== "tyre-age" && (weather ?? neglect) !== undefined)
      .map(({ check }) => check);
    const guessed = planOf({ ...old, unseen });
    expect(operationIn(guessed, "new-tyres")).toMatchObject({ because: ["tyre-condition"], assumed: true });
    const seen = planOf({ ...old, found: { "tyre-condition": "perished" } });
    expect(operationIn(seen, "new-tyres")).toMatchObject({ because: ["tyre-condition"], assumed: false });
    for (const { because, assumed } of seen.operations) if (because.length === 0) expect(assumed).toBe(false);
    const both = planOf({ ...old, unseen, found: { "tyre-age": "old" } });
    expect(operationIn(both, "new-tyres").because).toHaveLength(2);
    expect(operationIn(both, "new-tyres").assumed).toBe(false);
  });

  test("a fault that is cheaper told than cured is listed as told", () => {
    const found: Found = { bike: { componentTier: "entry" }, found: { "seatpost-free": "stuck" } };
    expect(planOf(found).disclosed).toEqual(["seatpost-free"]);
    expect(planOf({ ...found, bike: { componentTier: "top" } }).disclosed).toEqual([]);
  });

  test("tools that are not at hand and deliveries stand in the shopping list beside the parts", () => {
    const found: Found = { bike: { componentTier: "upper" }, found: { headset: "indexed" } };
    const extras = (tools: readonly string[] | undefined) =>
      planOf({ ...found, workshop: { tools } })
        .shoppingList.filter(({ kind }) => kind === "tool" || kind === "delivery")
        .map(({ kind, name }) => `${kind} ${name}`)
        .sort();
    const { tools } = BOOK.service.operations.get("replace-headset")!;
    expect(extras(undefined)).toEqual(["delivery Delivery"]);
    const wanted = [...tools].map((id) => `tool ${BOOK.service.tools.get(id)!.name}`);
    expect(extras([])).toEqual(expect.arrayContaining(["delivery Delivery", ...wanted]));
    expect(extras(tools.slice(1))).toContain(wanted[0]);
    expect(extras(tools.slice(1))).not.toContain(wanted[1]);
  });

  test("every operation tells how it is proved, and its torque where there is one", () => {
    for (const one of cases)
      for (const plan of plansIn(plainAnswer(requestOf(one))))
        for (const { operation, proof, torque } of plan.operations) {
          expect(proof, operation).not.toBe("");
          expect(torque, operation).toEqual(BOOK.service.operations.get(operation)!.torque);
        }
  });

  test("a moment to choose the course again is marked, before anything is ordered", () => {
    const plan = planOf({
      bike: { componentTier: "top" },
      found: { "seatpost-free": "stuck", "tyre-condition": "perished" },
    });
    const again = plan.operations.flatMap(({ redecide, operation }) => (redecide ? [operation] : []));
    expect(again).toEqual(expect.arrayContaining(["query-serial", "free-seatpost"]));
    expect(operationIn(plan, "new-tyres").redecide).toBe(false);
  });
});
