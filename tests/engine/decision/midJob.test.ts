import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CourseOutcome } from "../../../worker/engine/decision/appraisal.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import type { WeighedCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { type OpenFind, weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { DomainError } from "../../../worker/engine/domainError.ts";
import type { CourseId } from "../../../worker/engine/service/operation.ts";
import { seenFind } from "../properties/anyFind.ts";
import { type Found, lookedOver, openedCourse, risksOf, situationFor } from "./lookedOver.ts";
import { BOOK } from "./shippedBook.ts";

const SEED = 20261126;
type SoFar = NonNullable<AppraisalRequest["find"]["soFar"]>;

/** Worn all over: nothing that ends the job. */
const WORN: Found = {
  bike: { steering: "quill", barType: "drop" },
  found: {
    "seatpost-free": "stiff",
    chain: "worn-out",
    "tyre-condition": "perished",
    "brake-pads": "worn",
    "brake-function": "weak",
    headset: "loose",
  },
  find: { purchase: { paid: true } },
};

function midJob(soFar: SoFar, found: Found = WORN) {
  return appraise(lookedOver({ ...found, find: { ...found.find, soFar } }), BOOK);
}
function courseIn({ courses }: { readonly courses: readonly CourseOutcome[] }, course: CourseId) {
  return courses.find((one) => one.course === course)!;
}
const idsIn = ({ plan }: CourseOutcome) => plan!.operations.map(({ operation }) => operation);
const SELLING = new Set(
  BOOK.catalogue.service.operations.filter(({ selling }) => selling).map(({ id }) => id),
);

describe("with everything of a plan done and bought", () => {
  test.each(["restore", "make-safe"] as const)("to %s has only the selling left", (course) => {
    const before = courseIn(midJob({}), course);
    const done = idsIn(before).filter((id) => !SELLING.has(id));
    const bought = before
      .plan!.shoppingList.filter(({ kind }) => kind !== "delivery" && kind !== "tool")
      .map(({ part, quantity }) => ({ part, quantity }));
    const now = courseIn(midJob({ done, bought }), course);
    expect(idsIn(now)).toEqual(idsIn(before).filter((id) => SELLING.has(id)));
    expect(now.plan!.sharedSteps).toEqual([]);
    expect(now.plan!.shoppingList).toEqual([]);
    expect(now.plan!.cost.mean).toBe(0);
    expect(now.cashNeeded).toBe(0);
    expect(now.plan!.stopLimits).toEqual([]);
    expect(now.plan!.disclosed).toEqual(before.plan!.disclosed);
  });

  test("it sells as the bike that the plan foretold", () => {
    const before = openedCourse("restore", WORN);
    const done = before.plan.tasks.map(({ operation }) => operation.id).filter((id) => !SELLING.has(id));
    const now = openedCourse("restore", { ...WORN, find: { ...WORN.find, soFar: { done } } });
    const sold = (course: typeof before) => course.branches.find(({ price }) => price !== null)!.price!;
    expect(sold(now).logMedian).toBeCloseTo(sold(before).logMedian, 12);
  });

  test("a bike made complete is complete, and one painted over stays painted over", () => {
    const lacking: Found = { bike: { completeness: "major-missing" } };
    const situation = (done: string[], found: Found = lacking) =>
      situationFor(lookedOver({ ...found, find: { soFar: { done } } }));
    expect(situation([]).notRidingChance).toBe(1);
    const completed = situation(["complete-fittings"]);
    expect(completed.notRidingChance).toBe(0);
    expect(completed.bench.missingParts).toEqual([]);
    expect(completed.settled.attributes.completeness).toBe("complete");
    expect(situation(["repaint-spray"], {}).settled.originality).toBe(
      BOOK.catalogue.defaults.repaintedOriginality,
    );
  });
});

describe("work that is done", () => {
  test("is in no plan, and takes its minutes and those of its steps with it", () => {
    const before = courseIn(midJob({}), "make-safe").plan!;
    const { operations, sharedSteps } = courseIn(midJob({ done: ["new-tyres"] }), "make-safe").plan!;
    const left = before.operations.filter(({ operation }) => operation !== "new-tyres");
    expect(operations.map(({ operation }) => operation)).toEqual(left.map(({ operation }) => operation));
    operations.forEach(({ minutes }, at) => {
      expect(minutes).toBeCloseTo(left[at]!.minutes, 9);
    });
    const total = [...operations, ...sharedSteps].reduce((sum, { minutes }) => sum + minutes, 0);
    const now = courseIn(midJob({ done: ["new-tyres"] }), "make-safe").plan!;
    expect(now.minutes.mean).toBeCloseTo(total, 9);
    expect(now.minutes.mean).toBeLessThan(before.minutes.mean);
  });

  test("leaves the steps that other work still needs", () => {
    const steps = (done: string[]) =>
      courseIn(midJob({ done }), "make-safe").plan!.sharedSteps.map(({ step }) => step);
    // The post comes out to be greased, whoever freed it.
    expect(steps([])).toContain("seatpost-out");
    expect(steps(["free-seatpost"])).toContain("seatpost-out");
    expect(steps(["free-seatpost", "grease-post"])).not.toContain("seatpost-out");
  });

  test("cannot fail any more: a post that is out has no limit, no follow-up, and no risk to the frame", () => {
    const stuck: Found = {
      bike: { postMaterial: "aluminium", componentTier: "top" },
      found: { "seatpost-free": "stuck" },
    };
    const before = openedCourse("restore", stuck);
    const now = openedCourse("restore", { ...stuck, find: { soFar: { done: ["free-seatpost"] } } });
    const limits = ({ plan }: typeof before) => plan.tasks.filter(({ openEnd }) => openEnd !== null);
    expect(limits(before)).toHaveLength(1);
    expect(limits(now)).toEqual([]);
    expect(risksOf(before).frameHolds).toBeLessThan(1);
    expect(risksOf(now).frameHolds).toBe(1);
    expect(risksOf(now).money.mean).toBeLessThan(risksOf(before).money.mean);
  });

  test("leaves what it made necessary: gears are still to be indexed after a new chain", () => {
    const plan = (done: string[]) => idsIn(courseIn(midJob({ done }), "make-safe"));
    expect(plan([])).toEqual(expect.arrayContaining(["new-chain", "adjust-gears"]));
    expect(plan(["new-chain"])).toContain("adjust-gears");
    expect(plan(["new-chain", "adjust-gears"])).not.toContain("adjust-gears");
  });

  test("is done at every wheel", () => {
    const found: Found = {
      found: { "tyre-condition": { front: { level: "worn" }, rear: { level: "perished" } } },
    };
    const { findings, readiness } = midJob({ done: ["new-tyres"] }, found);
    const tyres = findings.filter(({ check }) => check === "tyre-condition");
    expect(tyres.map(({ position, level, curedBy }) => [position, level, curedBy])).toEqual([
      ["front", "worn", ["new-tyres"]],
      ["rear", "perished", ["new-tyres"]],
    ]);
    expect(readiness.blocking).toEqual([]);
  });

  test("does not touch what never stood: an option half done cures nothing", () => {
    const cut: Found = { found: { "seatpost-free": "stuck-cut" } };
    const level = (done: string[]) =>
      midJob({ done }, cut).findings.find(({ check }) => check === "seatpost-free")!;
    expect(level(["replace-seatpost"]).curedBy).toEqual([]);
    expect(level(["post-by-workshop", "replace-seatpost"]).curedBy).toEqual([
      "post-by-workshop",
      "replace-seatpost",
    ]);
  });
});

describe("a finding that work has cured", () => {
  test("shows the level that was found and what cured it, blocks nothing and costs no condition", () => {
    const before = midJob({});
    const now = midJob({ done: ["new-tyres"] });
    const tyre = (answer: typeof now) => answer.findings.find(({ check }) => check === "tyre-condition")!;
    expect(tyre(before)).toMatchObject({ level: "perished", safetyBlock: true, curedBy: [] });
    expect(tyre(now)).toMatchObject({ level: "perished", safetyBlock: false, curedBy: ["new-tyres"] });
    expect(before.readiness.blocking).toContain("tyre-condition");
    expect(now.readiness.blocking).not.toContain("tyre-condition");
    const condition = (soFar: SoFar) =>
      situationFor(lookedOver({ ...WORN, find: { soFar } })).unworkedCondition;
    expect(condition({ done: ["new-tyres"] })).toBeGreaterThan(condition({}));
  });

  test("takes a symptom with it only once every cause of it is cured", () => {
    const weak = (done: string[]) =>
      midJob({ done }).findings.find(({ check }) => check === "brake-function")!.curedBy;
    expect(weak([])).toEqual([]);
    expect(weak(["new-pads"])).toEqual(["new-pads"]);
    const two: Found = { found: { ...WORN.found, "inner-cable": "frayed" } };
    const both = (done: string[]) =>
      midJob({ done }, two).findings.find(({ check }) => check === "brake-function")!.curedBy;
    expect(both(["new-pads"])).toEqual([]);
    expect(both(["new-pads", "new-brake-cables"])).toEqual(["new-pads", "new-brake-cables"]);
  });

  test("sells as one that rides once nothing blocks", () => {
    const blocked = midJob({ done: [] });
    const done = ["new-tyres", "new-pads", "adjust-headset", "free-seatpost", "new-chain", "adjust-gears"];
    const now = midJob({ done });
    expect(now.readiness.blocking).toEqual([]);
    expect(now.value!.asFound.p50).toBeGreaterThan(blocked.value!.asFound.p50);
  });

  test("that a test decides stands until its check is answered: done says nothing of what it showed", () => {
    for (const check of ["front-impact", "frame-cracks"]) {
      const level = check === "front-impact" ? "suspect" : "paint-line";
      const found = (found: Record<string, string>): Found => ({ found });
      const tested = midJob({ done: ["decide-crack"] }, found({ [check]: level }));
      expect(tested.findings.find((one) => one.check === check)).toMatchObject({
        level,
        curedBy: [],
        safetyBlock: true,
      });
      expect(tested.readiness).toMatchObject({ ready: false, blocking: expect.arrayContaining([check]) });
      expect(tested.cautions.map(({ id }) => id)).toEqual(
        midJob({}, found({ [check]: level })).cautions.map(({ id }) => id),
      );
      // It is not made twice.
      expect(tested.nextChecks.some((look) => "operation" in look)).toBe(false);
      const sound = midJob({ done: ["decide-crack"] }, found({ [check]: "none" }));
      expect(sound.readiness.blocking).not.toContain(check);
      expect(courseIn(sound, "make-safe").available).toBe(true);
    }
    const make = (found: Found["found"]) =>
      courseIn(midJob({ done: ["decide-crack"] }, { found: found! }), "make-safe");
    expect(make({ "front-impact": "suspect" }).available).toBe(false);
    expect(make({ "frame-cracks": "crack-structural" }).available).toBe(false);
  });

  test("that a query decides is owed until its check is answered", () => {
    const owed = (done: string[]) => midJob({ done }, { found: { serial: "not-queried" } }).readiness.owed;
    expect(owed([])).toContain("serial");
    expect(owed(["query-serial"])).toContain("serial");
  });
});

describe("a check that nobody made", () => {
  test("stands at its best level where work has cured all that can be cured of it", () => {
    const unseen: Found = { unseen: ["chain"] };
    const chances = (done: string[]) =>
      situationFor(lookedOver({ ...unseen, find: { soFar: { done } } })).inspection.unseen.find(
        ({ check }) => check === "chain",
      )!.probabilities;
    expect(chances([])[0]!).toBeLessThan(1);
    expect(chances(["new-chain"])[0]!).toBeLessThan(1);
    // A chain that has gone wants new sprockets as well.
    expect(chances(["new-chain", "new-sprockets"])).toEqual([1, 0, 0, 0]);
  });

  test("goes with the cause that would explain it: tyres that nobody looked at are new once the glued ones are replaced", () => {
    const glued: Found = {
      bike: { category: "road-racing" },
      found: { "tyre-size": "tubular" },
      unseen: ["tyre-condition"],
    };
    const fine = (done: string[]) =>
      situationFor(lookedOver({ ...glued, find: { soFar: { done } } })).inspection.unseen.find(
        ({ check }) => check === "tyre-condition",
      )!.probabilities[0]!;
    expect(fine([])).toBeLessThan(1);
    expect(fine(["tubular"])).toBeCloseTo(1, 12);
  });

  test("keeps the chance of what ends the job, and is still owed", () => {
    const unseen: Found = { unseen: ["rear-alignment", "frame-cracks"] };
    const every = BOOK.catalogue.service.operations.map(({ id }) => id);
    const { inspection } = situationFor(lookedOver({ ...unseen, find: { soFar: { done: every } } }));
    const terminal = BOOK.checks
      .get("frame-cracks")!
      .levels.map(({ terminal }) => terminal === "parts-or-recycle" || terminal === "recycle");
    const before = situationFor(lookedOver(unseen)).inspection.unseen;
    for (const { check, probabilities } of inspection.unseen) {
      expect(probabilities.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
      if (check !== "frame-cracks") continue;
      const old = before.find((one) => one.check === check)!.probabilities;
      probabilities.forEach((chance, rank) => {
        if (terminal[rank]) expect(chance).toBe(old[rank]);
      });
    }
    const { readiness } = midJob({ done: every }, unseen);
    expect(readiness.owed).toContain("frame-cracks");
  });
});

describe("a discovery", () => {
  test("told as an observation is compared again from now on, with what was done already sunk", () => {
    const done = ["wash", "new-tyres"];
    const fine = midJob({ done, money: 40, minutes: 90 });
    const found = { ...WORN.found, "fork-steerer": "cracked" };
    const worse = midJob({ done, money: 40, minutes: 90 }, { ...WORN, found });
    expect(worse.findings.find(({ check }) => check === "fork-steerer")!.curedBy).toEqual([]);
    expect(courseIn(worse, "make-safe").netBenefit).not.toBe(courseIn(fine, "make-safe").netBenefit);
    for (const course of worse.courses) {
      if (course.plan) expect(idsIn(course)).not.toEqual(expect.arrayContaining(["new-tyres"]));
    }
    expect(worse.soFar).toEqual({ money: 40, hours: 1.5, done, bought: [] });
  });
});

describe("parts that are bought", () => {
  const TYRES: Found = { found: { "tyre-condition": "perished" } };
  const price = (part: string) =>
    courseIn(midJob({}, TYRES), "make-safe").plan!.shoppingList.find((line) => line.part === part)!.price;
  const planAfter = (soFar: SoFar, found = TYRES) =>
    openedCourse("make-safe", { ...found, find: { soFar } }).plan;

  test("cost no cash and are not on the list; what is short is bought at the usual price", () => {
    const list = (quantity: number) =>
      courseIn(midJob({ bought: [{ part: "tyre", quantity }] }, TYRES), "make-safe").plan!.shoppingList;
    const tyres = (quantity: number) => list(quantity).find(({ part }) => part === "tyre");
    expect(tyres(0.5)).toMatchObject({ quantity: 1.5, price: price("tyre") });
    expect(tyres(1)).toMatchObject({ quantity: 1, price: price("tyre") });
    expect(tyres(2)).toBeUndefined();
    expect(planAfter({}).cash.mean - planAfter({ bought: [{ part: "tyre" }] }).cash.mean).toBeCloseTo(
      price("tyre"),
      9,
    );
  });

  test("that a plan uses give up what they are worth unused, in its money and not in its cash", () => {
    const none = planAfter({});
    const two = planAfter({ bought: [{ part: "tyre", quantity: 3, reuseValue: 4 }] });
    expect(none.money.mean - two.money.mean).toBeCloseTo(2 * (price("tyre") - 4), 9);
    expect(two.money.mean - two.cash.mean).toBeCloseTo(2 * 4, 9);
    expect(none.cash).toEqual(none.money);
  });

  test("are worth what they are to whoever does not fit them, until finished work has used them up", () => {
    const worth = (soFar: SoFar) =>
      situationFor(lookedOver({ ...TYRES, find: { soFar } })).settled.reuseWorth;
    const bought = [{ part: "tyre", quantity: 3, reuseValue: 4 }];
    expect(worth({ bought })).toBe(12);
    expect(worth({ bought, done: ["new-tyres"] })).toBe(4);
    expect(worth({ bought, done: ["new-chain"] })).toBe(12);
    const rear: Found = {
      found: { "tyre-condition": { front: { level: "good" }, rear: { level: "perished" } } },
    };
    const soFar = { bought, done: ["new-tyres"] };
    expect(situationFor(lookedOver({ ...rear, find: { soFar } })).settled.reuseWorth).toBe(8);
  });

  test("are dealt out once: what one job takes another has to buy", () => {
    const found: Found = { found: { "tyre-condition": "perished", chain: "worn-out" } };
    const dose = planAfter({}, found)
      .tasks.flatMap(({ purchases }) => purchases)
      .filter(({ part }) => part.id === "gloves-rags" || part.id === "degreaser");
    const needs = dose
      .filter(({ part }) => part.id === "degreaser")
      .reduce((sum, { quantity }) => sum + quantity, 0);
    expect(needs).toBeGreaterThan(1);
    const one = planAfter({ bought: [{ part: "degreaser" }] }, found);
    const atHand = one.tasks
      .flatMap(({ purchases }) => purchases)
      .filter(({ part }) => part.id === "degreaser")
      .reduce((sum, purchase) => sum + purchase.atHand, 0);
    expect(atHand).toBe(1);
    const each = dose.find(({ part }) => part.id === "degreaser")!.unitPrice.mean;
    expect(planAfter({}, found).money.mean - one.money.mean).toBeCloseTo(each, 9);
  });

  test("spare the delivery once nothing is left to order", () => {
    const delivered = (quantity: number) =>
      planAfter({
        bought: [
          { part: "tyre", quantity },
          { part: "tube", quantity: 2 },
          { part: "rim-tape", quantity: 2 },
        ],
      }).extras.some(({ kind }) => kind === "delivery");
    expect([0.5, 1, 2].map(delivered)).toEqual([true, true, false]);
  });

  test("bought twice count together, worth their mean", () => {
    const bought = [
      { part: "tyre", reuseValue: 2 },
      { part: "tyre", quantity: 3, reuseValue: 6 },
    ];
    expect(midJob({ bought }, TYRES).soFar.bought).toEqual([{ part: "tyre", quantity: 4, reuseValue: 5 }]);
  });
});

describe("parts that no plan wants", () => {
  test("are worth the same whatever a query says: what it is worth to ask does not hang on them", () => {
    const asked = (bought: { part: string; quantity: number; reuseValue: number }[]) =>
      midJob({ bought }, { found: { serial: "not-queried" } }).nextChecks.find(
        (look) => "operation" in look,
      )!;
    const none = asked([]);
    expect(none.sampleInformation).toBeGreaterThan(0);
    const held = asked([{ part: "kickstand", quantity: 3, reuseValue: 500 }]);
    expect(held.sampleInformation).toBeCloseTo(none.sampleInformation, 6);
  });
});

describe("parts bought before the bike is", () => {
  test("are there whether it is bought or not: they raise no offer", () => {
    const offered = (bought: { part: string; quantity: number; reuseValue: number }[]) => {
      const { decision, nextChecks } = midJob(
        { bought },
        { unseen: ["frame-cracks"], find: { purchase: { price: 10 } } },
      );
      return [decision.walkAwayPrice!, nextChecks[0]!.offerSwing!] as const;
    };
    const [price, swing] = offered([]);
    const [held, swingThen] = offered([{ part: "kickstand", quantity: 1, reuseValue: 40 }]);
    expect(price).toBeGreaterThan(0);
    expect(held).toBeCloseTo(price, 9);
    expect(swingThen).toBeCloseTo(swing, 9);
  });
});

describe("what is told of the job so far", () => {
  test("gives the same bytes for the same request", () => {
    const soFar = { done: ["new-tyres", "wash"], bought: [{ part: "chain", reuseValue: 3 }], money: 12 };
    expect(JSON.stringify(midJob(soFar))).toBe(JSON.stringify(midJob(soFar)));
  });

  test("is refused where it names what the catalogue does not know", () => {
    expect(() => midJob({ done: ["levitate"] })).toThrow(DomainError);
    expect(() => midJob({ bought: [{ part: "moon" }] })).toThrow(DomainError);
  });

  // The planner weighs what is known; what was not looked at is allowed for beside its plan, so that with little left to do it may plan less and leave more
  // to the allowance. So the law is told of finds looked over from end to end.

  /** Net benefit of a course before and after some work; null where it is closed, or worth less than what is done with a lost frame. */
  function netBenefits(
    request: AppraisalRequest,
    course: "restore" | "make-safe",
    chosen: (planned: readonly string[]) => readonly string[],
  ): { readonly before: number; readonly now: number } | null {
    const courses = weighed(request);
    const before = courses.find((one) => one.course === course)!;
    // A bike worth more lost than finished gains by the chance to lose it.
    const lost = courses.filter((one) => one.course !== "restore" && one.course !== "make-safe");
    if (!before.open || lost.some((one) => benefitOf(one) > benefitOf(before))) return null;
    const planned = before.plan.tasks.map(({ operation }) => operation.id);
    const find = { ...request.find, soFar: { ...request.find.soFar, done: chosen(planned) } };
    const now = weighed({ ...request, find }).find((one) => one.course === course)!;
    return { before: benefitOf(before), now: benefitOf(now) };
  }

  function weighed(request: AppraisalRequest): readonly WeighedCourse[] {
    return (weighFind(request, BOOK) as OpenFind).courses;
  }

  function benefitOf(course: WeighedCourse): number {
    return course.open ? course.expected.netBenefit : Number.NEGATIVE_INFINITY;
  }

  test("work done never lowers the net benefit of a course that planned it: what was spent is sunk", () => {
    let compared = 0;
    fc.assert(
      fc.property(
        seenFind,
        fc.constantFrom("restore" as const, "make-safe" as const),
        fc.infiniteStream(fc.boolean()),
        (request, course, dice) => {
          const worth = netBenefits(request, course, (planned) => planned.filter(() => dice.next().value));
          if (worth === null) return;
          compared++;
          expect(worth.now).toBeGreaterThanOrEqual(worth.before - 1e-6);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(50);
  });

  test("nor does work that nothing called for, unless it leaves more to do", () => {
    const plain = BOOK.catalogue.service.operations
      .filter(({ entails, effect, steps }) => {
        const opened = BOOK.service.closure.get(steps)!;
        return entails.length === 0 && !effect.repaints && opened.every((step) => step.entails.length === 0);
      })
      .map(({ id }) => id);
    let compared = 0;
    fc.assert(
      fc.property(
        seenFind,
        fc.constantFrom("restore" as const, "make-safe" as const),
        fc.subarray(plain),
        (request, course, done) => {
          const worth = netBenefits(request, course, () => done);
          if (worth === null) return;
          compared++;
          expect(worth.now).toBeGreaterThanOrEqual(worth.before - 1e-6);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(50);
  });
});
