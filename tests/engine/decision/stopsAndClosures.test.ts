import { describe, expect, test } from "vitest";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import { inspectFind } from "../../../worker/engine/decision/inspectFind.ts";
import { valueFind } from "../../../worker/engine/decision/valueFind.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { BOOK } from "./shippedBook.ts";

const appraised = (found: Found) => appraise(lookedOver(found), BOOK);
const open = (found: Found) =>
  appraised(found).courses.flatMap(({ course, available }) => (available ? [course] : []));
const ALL = ["restore", "make-safe", "sell-as-found", "break-for-parts", "leave"];
const PARTS_OR_LEAVE = ["break-for-parts", "leave"];

describe("what stops everything", () => {
  test.each([
    [{ serial: "removed" }, "serial"],
    [{ serial: "reported" }, "serial"],
    [{ ownership: "none" }, "title"],
    [{ ownership: "contradictory" }, "title"],
  ])("%j: no figure is given, whatever the bike is worth", (found, caution) => {
    const answer = appraised({ bike: { componentTier: "top" }, found });
    expect(answer.decision).toMatchObject({
      course: "leave",
      stop: caution,
      lookFirst: null,
      walkAwayPrice: null,
      breakEvenSalePrice: null,
    });
    expect([answer.value, answer.courses]).toEqual([null, []]);
    expect(answer.cautions[0]).toMatchObject({ id: caution, kind: "hard" });
    expect(answer.decision.reasons).toHaveLength(1);
  });

  test("an electric bicycle is out of scope: no figure, its own caution, and in every route", () => {
    const request = lookedOver({ bike: { category: "e-bike-out-of-scope" } });
    const answer = appraise(request, BOOK);
    expect(answer.decision).toMatchObject({ stop: "e-bike", course: "leave", walkAwayPrice: null });
    expect([answer.value, answer.courses]).toEqual([null, []]);
    expect(valueFind(request, BOOK)).toMatchObject({ value: null, stop: "e-bike" });
    expect(inspectFind(request, BOOK).cautions.map(({ id }) => id)).toContain("e-bike");
  });

  test("what was merely not asked stops nothing: it is owed", () => {
    const answer = appraised({ unseen: ["serial", "ownership"] });
    expect(answer.decision.stop).toBeNull();
    expect(answer.readiness.owed).toEqual(expect.arrayContaining(["serial", "ownership"]));
    expect(answer.courses).toHaveLength(5);
  });

  test("a number that cannot be read and a statement instead of a receipt stop nothing", () => {
    expect(open({ found: { serial: "illegible", ownership: "statement" } })).toEqual(ALL);
  });
});

describe("what closes a course before money is compared", () => {
  test.each<[string, Found]>([
    ["a yielded front end", { found: { "front-impact": "clear" } }],
    ["a structural crack", { found: { "frame-cracks": "crack-structural" } }],
    ["a creased tube", { found: { "frame-dents": "creased" } }],
    ["rust through the tube", { found: { rust: "holed" } }],
    ["deep rust", { found: { rust: "deep" } }],
    [
      "a bond that failed",
      { bike: { frameMaterial: "aluminium", era: "1990s" }, found: { "alloy-corrosion": "bond-failure" } },
    ],
    [
      "broken carbon",
      { bike: { frameMaterial: "carbon", era: "2010s" }, found: { "carbon-damage": "broken" } },
    ],
  ])("%s leaves parts or leaving, and says why", (_, found) => {
    expect(open(found)).toEqual(PARTS_OR_LEAVE);
    const closed = appraised(found).courses.filter(({ available }) => !available);
    for (const course of closed) {
      expect(course.unavailableBecause).toBeTruthy();
      expect([course.margin, course.hours, course.plan, course.netBenefit, course.cashNeeded]).toEqual([
        null,
        null,
        null,
        null,
        null,
      ]);
    }
  });

  test("a fault that nothing cures on this bike closes riding, not the sale with the fault told", () => {
    const aluminium: Found = {
      bike: { frameMaterial: "aluminium", era: "2000s" },
      found: { "rear-alignment": "far" },
    };
    expect(open(aluminium)).toEqual(["sell-as-found", "break-for-parts", "leave"]);
    expect(open({ found: { "rear-alignment": "far" } })).toEqual(ALL);
  });

  test("a suspect level closes riding until its test is done", () => {
    const suspect: Found = {
      bike: { frameMaterial: "carbon", era: "2010s", componentTier: "upper" },
      found: { "carbon-damage": "suspect" },
    };
    expect(open(suspect)).toEqual(["sell-as-found", "break-for-parts", "leave"]);
    expect(open({ found: { "front-impact": "suspect" } })).toEqual([
      "sell-as-found",
      "break-for-parts",
      "leave",
    ]);
  });

  test("a line that may be a crack closes nothing: its test opens the plan, and is worth doing first", () => {
    const found: Found = { found: { "frame-cracks": "paint-line" } };
    expect(open(found)).toEqual(ALL);
    const { courses, decision } = appraise(lookedOver(found), BOOK);
    const planned = courses.find(({ course }) => course === decision.course)!.plan!.operations;
    expect(planned.some(({ operation }) => operation === "decide-crack")).toBe(true);
    expect(decision.lookFirst).toBe("decide-crack");
  });

  test("a suspect carbon post on a steel frame is no question of a test: the post is replaced", () => {
    const post: Found = {
      bike: { era: "2010s", postMaterial: "carbon", barMaterial: "steel", componentTier: "upper" },
      found: { "carbon-damage": "suspect" },
    };
    expect(open(post)).toEqual(ALL);
    const [restore] = appraised(post).courses;
    expect(restore!.plan!.operations.map(({ operation }) => operation)).toContain("replace-seatpost");
  });

  test("a bare frame is not built up here, and has no parts to take off", () => {
    for (const completeness of ["frame-only", "frame-and-fork"] as const)
      expect(open({ bike: { completeness } })).toEqual(["sell-as-found", "leave"]);
  });
});

describe("readiness", () => {
  test("is given where every check that must be answered was, without a block", () => {
    expect(appraised({}).readiness).toEqual({ ready: true, blocking: [], owed: [] });
  });

  test("is refused for a blocking finding, named once", () => {
    const worn = { front: { level: "worn" }, rear: { level: "worn" } };
    expect(appraised({ found: { "brake-pads": worn } }).readiness).toEqual({
      ready: false,
      blocking: ["brake-pads"],
      owed: [],
    });
  });

  test("is refused for what was not looked at, where that must be", () => {
    for (const { id, ifNotChecked } of BOOK.catalogue.inspection.checks) {
      const answer = appraised({ unseen: [id] });
      const applies =
        answer.findings.every(({ check }) => check !== id) && answer.looked.applicable > answer.looked.made;
      expect(answer.readiness.owed, id).toEqual(applies && ifNotChecked === "block" ? [id] : []);
    }
  });

  test("is refused for a number not yet queried: half an answer is owed", () => {
    expect(appraised({ found: { serial: "not-queried" } }).readiness).toEqual({
      ready: false,
      blocking: [],
      owed: ["serial"],
    });
  });

  test("an advisory fault alone does not refuse it", () => {
    expect(appraised({ found: { "tyre-condition": "fine-cracks" } }).readiness.ready).toBe(true);
  });
});
