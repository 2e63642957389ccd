import { describe, expect, test } from "vitest";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import { type Found, lookedOver, openedCourse } from "../../engine/decision/lookedOver.ts";
import { BOOK } from "../../engine/decision/shippedBook.ts";

/** Facts that every mechanic knows, held against the whole engine: common practice, no source. */

const UPPER = { componentTier: "upper" } as const;
const answer = (found: Found) => appraise(lookedOver(found), BOOK);
const open = (found: Found) =>
  answer(found).courses.flatMap(({ course, available }) => (available ? [course] : []));
const work = (found: Found, course: "restore" | "make-safe" = "make-safe") =>
  openedCourse(course, found).plan.tasks.map(({ operation }) => operation.id);
const named = (found: Found, operation: string) =>
  openedCourse("make-safe", found).plan.tasks.find((one) => one.operation.id === operation)!.name;

describe("facts of the trade (common practice, no source)", () => {
  test("a steel frame out of line can be cold set", () => {
    expect(work({ bike: UPPER, found: { "rear-alignment": "out" } })).toContain("cold-set");
  });

  test("an aluminium or carbon frame far out of line is never bent back: a reason to walk away", () => {
    for (const frameMaterial of ["aluminium", "carbon"] as const) {
      const found: Found = {
        bike: { frameMaterial, era: "2000s" },
        found: { "rear-alignment": "far" },
        find: { purchase: { price: 150, paid: false } },
      };
      expect(open(found)).not.toContain("restore");
      expect(open(found)).not.toContain("make-safe");
      expect(answer(found).decision.course).toBe("leave");
      const straight = answer({ ...found, found: {} }).decision.walkAwayPrice!;
      expect(answer(found).decision.walkAwayPrice).toBeLessThan(straight / 2);
    }
  });

  test("surface rust is acceptable; rust through the tube is not", () => {
    expect(open({ found: { rust: "surface" } })).toContain("restore");
    expect(answer({ found: { rust: "surface" } }).readiness.ready).toBe(true);
    expect(open({ found: { rust: "holed" } })).toEqual(["break-for-parts", "leave"]);
  });

  test("a chain at 0.5 % on seven sprockets still has life and is not replaced to make the bike safe; on eleven it is", () => {
    const stretched = (rearSprockets: number): Found => ({
      bike: { era: "2010s" },
      dimensions: { rearSprockets },
      found: { chain: { measured: { length24: 304.8 * 1.005 } } },
    });
    expect(work({ ...stretched(7), bike: { era: "2010s", componentTier: "entry" } })).not.toContain(
      "new-chain",
    );
    expect(work(stretched(11))).toContain("new-chain");
  });

  test("pitted headset races call for a whole headset, not for new balls", () => {
    const notched = work({ bike: UPPER, found: { headset: "indexed" } });
    expect(notched).toContain("replace-headset");
    expect(notched).not.toContain("regrease-headset");
    expect(work({ bike: UPPER, found: { headset: "rough" } })).toContain("regrease-headset");
  });

  test("a bearing that is loose but smooth needs adjustment only", () => {
    expect(work({ found: { headset: "loose" } })).toContain("adjust-headset");
    expect(named({ bike: UPPER, found: { "hub-bearings": "loose" } }, "service-hub")).toBe(
      "Adjust hub cones",
    );
    expect(named({ bike: UPPER, found: { "bb-bearing": "loose" } }, "service-bb")).toBe(
      "Adjust bottom bracket play",
    );
    for (const fault of [{ headset: "loose" }, { "hub-bearings": "loose" }, { "bb-bearing": "loose" }]) {
      const { purchases } = openedCourse("make-safe", { bike: UPPER, found: fault }).plan.tasks.find(
        ({ because }) => because.length > 0,
      )!;
      expect(purchases).toEqual([]);
    }
  });

  test("nothing is taken apart to adjust what is merely loose: fork, axles and bracket stay where they are", () => {
    const taken = (fault: string) =>
      openedCourse("make-safe", { bike: UPPER, found: { [fault]: "loose" } }).plan.steps.map(
        ({ step }) => step.id,
      );
    const apart = ["fork-out", "front-hub-open", "rear-hub-open", "bb-out", "cranks-off"];
    for (const fault of ["headset", "hub-bearings", "bb-bearing"])
      expect(taken(fault).filter((step) => apart.includes(step))).toEqual([]);
    const notched = openedCourse("make-safe", { bike: UPPER, found: { headset: "indexed" } }).plan;
    expect(notched.steps.map(({ step }) => step.id)).toContain("fork-out");
  });

  test("a pitted hub race ends a cheap hub repair: the wheel is replaced", () => {
    const pitted = work({ bike: { componentTier: "top" }, found: { "hub-cones": "race-pitted" } });
    expect(pitted).not.toContain("service-hub");
    const cones = work({ bike: { componentTier: "top" }, found: { "hub-cones": "cone-pitted" } });
    expect(cones).toEqual(expect.arrayContaining(["service-hub", "replace-cones"]));
    const rough: Found = { found: { "hub-bearings": "rough", "hub-cones": "race-pitted" } };
    expect(work({ bike: UPPER, ...rough }).filter((id) => id === "service-hub")).toEqual([]);
  });

  test("a frayed inner cable is a cheap replacement and one that safety asks for", () => {
    const course = openedCourse("make-safe", { found: { "inner-cable": "frayed" } });
    const cables = course.plan.tasks.find(({ operation }) => operation.id === "new-brake-cables")!;
    expect(cables.because.map(({ need }) => need)).toEqual(["required"]);
    expect(cables.operation.safetyCritical).toBe(true);
    const money = cables.purchases.reduce(
      (sum, { quantity, unitPrice }) => sum + quantity * unitPrice.mean,
      0,
    );
    const { restored } = answer({ found: { "inner-cable": "frayed" } }).value!;
    expect(money).toBeLessThan(restored!.p50 / 10);
    expect(answer({ found: { "inner-cable": "frayed" } }).readiness.blocking).toEqual(["inner-cable"]);
  });

  test("perished tyres are replaced before anyone rides", () => {
    const found: Found = { found: { "tyre-condition": "perished" } };
    for (const course of ["restore", "make-safe"] as const) {
      const order = work(found, course);
      expect(order).toContain("new-tyres");
      expect(order.indexOf("new-tyres")).toBeLessThan(order.indexOf("final-check"));
    }
    expect(answer(found).readiness.ready).toBe(false);
  });

  test("tape comes off to look at the bar, and is put on anew", () => {
    const course = openedCourse("make-safe", {
      bike: { barType: "drop", componentTier: "top" },
      found: { "bar-corrosion": "pitted" },
    });
    expect(course.plan.steps.map(({ step }) => step.id)).toContain("bar-tape-off");
    expect(course.plan.tasks.map(({ operation }) => operation.id)).toEqual(
      expect.arrayContaining(["replace-bar", "re-tape"]),
    );
    const order = course.plan.tasks.map(({ operation }) => operation.id);
    expect(order.indexOf("replace-bar")).toBeLessThan(order.indexOf("re-tape"));
    expect(BOOK.checks.get("bar-corrosion")!.where).toBe("dismantled");
  });

  test("a bar that nobody saw under its tape is not known to be sound, however well the bike does otherwise", () => {
    const bike = { barType: "drop", barMaterial: "aluminium" } as const;
    const cautions = (unseen: readonly string[]) => answer({ bike, unseen }).cautions.map(({ id }) => id);
    expect(cautions(["bar-corrosion"])).toContain("bar-hidden");
    expect(cautions([])).not.toContain("bar-hidden");
  });

  test("wheels are among the dearest parts to replace: new, a pair costs more than nine parts in ten", () => {
    for (const tier of ["entry", "mid", "upper", "top"] as const) {
      const price = (id: string) => BOOK.service.parts.get(id)!.prices.new[tier].typical;
      const pair = price("wheel-front") + price("wheel-rear");
      const others = BOOK.catalogue.service.parts.filter(
        ({ id, kind }) => kind === "part" && !id.startsWith("wheel-"),
      );
      const cheaper = others.filter(({ id }) => price(id) < pair);
      expect(cheaper.length / others.length, tier).toBeGreaterThan(0.9);
    }
  });

  test("a stuck post is freed before any part is ordered, and the longer it takes the less is left", () => {
    const found: Found = {
      bike: { componentTier: "top", postMaterial: "aluminium" },
      found: { "seatpost-free": "stuck", "tyre-condition": "perished" },
    };
    const order = work(found);
    expect(order.indexOf("free-seatpost")).toBeLessThan(order.indexOf("new-tyres"));
    const free = openedCourse("make-safe", { ...found, found: { "tyre-condition": "perished" } });
    expect(openedCourse("make-safe", found).expected.netBenefit).toBeLessThan(free.expected.netBenefit);
  });
});
