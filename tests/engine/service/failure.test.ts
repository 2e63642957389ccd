import { describe, expect, test } from "vitest";
import type { Tier } from "../../../worker/engine/bicycle.ts";
import type { Bench } from "../../../worker/engine/service/bench.ts";
import { failureChance, failuresOf } from "../../../worker/engine/service/failure.ts";
import { expectedPrice } from "../../../worker/engine/service/partPrice.ts";
import { buildTask, type Place } from "../../../worker/engine/service/task.ts";
import { type Found, lookedOver, openedCourse, risksOf, situationFor } from "../decision/lookedOver.ts";
import { BOOK } from "../decision/shippedBook.ts";

const operationOf = (id: string) => BOOK.service.operations.get(id)!;
const benchOf = (found: Found): Bench => situationFor(lookedOver(found)).bench;

function ways(id: string, found: Found, place: Place = "bike") {
  const bench = benchOf(found);
  return failuresOf(buildTask(operationOf(id), place, bench), bench);
}

function failing(id: string, found: Found, place: Place = "bike") {
  return ways(id, found, place)[0]!;
}

/** Expected price of one new piece by the PERT rule. */
function priceOf(part: string, tier: Tier) {
  const { low, typical, high } = BOOK.service.parts.get(part)!.prices.new[tier];
  return (low + 4 * typical + high) / 6;
}

const STUCK: Found = { bike: { postMaterial: "aluminium" }, found: { "seatpost-free": "stuck" } };
const DISCS: Found = {
  bike: { brakeType: "disc-mechanical", era: "2010s" },
  found: { rotor: "worn" },
};

describe("an operation that may fail", () => {
  test("fails with the chance of the first row that holds: material, how it was kept, how stuck it is", () => {
    const chance = (found: Found) =>
      failureChance(operationOf("free-seatpost").failure!, benchOf({ ...STUCK, ...found }));
    expect(chance({ found: { "seatpost-free": "stiff" } })).toBe(0.04);
    const kept = (where: "indoors" | "sheltered" | "outdoors", postMaterial: "steel" | "aluminium") =>
      chance({ bike: { postMaterial, kept: where } });
    expect([kept("indoors", "steel"), kept("sheltered", "steel"), kept("outdoors", "steel")]).toEqual([
      0.15, 0.25, 0.35,
    ]);
    expect([
      kept("indoors", "aluminium"),
      kept("sheltered", "aluminium"),
      kept("outdoors", "aluminium"),
    ]).toEqual([0.25, 0.35, 0.5]);
  });

  test("brings its own further minutes at that chance: two hours of rubbing back paint, at 20 in 100", () => {
    expect(failing("repaint-spray", {})).toEqual({
      failure: {
        chance: 0.2,
        next: [],
        money: { mean: 0, variance: 0 },
        minutes: { mean: 120, variance: 0 },
        endsFrame: 0,
        untilEnd: { money: 0, minutes: 120 },
      },
      contingency: {
        money: { mean: 0, variance: 0 },
        minutes: { mean: 0.2 * 120, variance: expect.closeTo(0.2 * 0.8 * 120 ** 2, 9) },
      },
      endsFrame: 0,
      endsTitle: 0,
    });
  });

  test("brings the work that must follow: a rotor at 10 in 100 spoils the pads of its brake, by hand", () => {
    const { contingency } = failing("replace-rotor", DISCS, "rear");
    // New pads: 8 14 25 minutes and two sets for both brakes, so one set and half the minutes for one; one tier below the bike.
    expect(contingency.minutes.mean).toBeCloseTo((0.1 * (8 + 4 * 14 + 25)) / 6 / 2, 9);
    expect(contingency.money.mean).toBeCloseTo(0.1 * priceOf("disc-pads", "entry"), 9);
    const { low, high } = BOOK.service.parts.get("disc-pads")!.prices.new.entry;
    const spread = ((high - low) / 6) ** 2;
    expect(contingency.money.variance).toBeCloseTo(
      0.1 * spread + 0.1 * 0.9 * priceOf("disc-pads", "entry") ** 2,
      9,
    );
  });

  test("tells every way that may follow, with its own risk to the frame", () => {
    // Fails in 35 of 100. A workshop loses 1 frame in 10, a saw 2, and nobody saws in a carbon frame.
    const lost = (bike: Found["bike"] = {}) =>
      ways("free-seatpost", { bike: { ...STUCK.bike, ...bike }, found: STUCK.found! }).map(
        ({ endsFrame }) => endsFrame,
      );
    expect(lost()).toEqual([expect.closeTo(0.35 * 0.1, 12), expect.closeTo(0.35 * 0.2, 12)]);
    expect(lost({ frameMaterial: "carbon", era: "2010s" })).toEqual([expect.closeTo(0.35 * 0.1, 12)]);
  });

  test("is followed by what leaves most: a dear frame goes to the workshop unless that asks more than the frame, a cheaper one is sawn", () => {
    // Of the posts that are given up, the share that ends the frame tells which way was taken.
    const taken = (componentTier: Tier, workshop: Found["workshop"] = {}) => {
      const found = { bike: { ...STUCK.bike, componentTier }, found: STUCK.found!, workshop };
      const course = openedCourse("restore", found);
      const { tasks } = course.plan;
      return (
        (1 - risksOf(course).frameHolds) /
        (1 - tasks.find(({ openEnd }) => openEnd !== null)!.openEnd!.releaseChance)
      );
    };
    expect(taken("top")).toBeCloseTo(0.1, 12);
    expect(taken("top", { partPrices: { "svc-post-removal": 900 } })).toBeCloseTo(0.2, 12);
    expect(taken("mid", { hourlyGoal: 1 })).toBeCloseTo(0.2, 12);
  });

  test("a dearer blade never buys a smaller risk: net benefit falls with its price, or stays", () => {
    const worth = (blades: number) =>
      openedCourse("make-safe", {
        bike: { ...STUCK.bike, componentTier: "top" },
        found: STUCK.found!,
        workshop: { partPrices: { "saw-blades": blades } },
      }).expected.netBenefit;
    const falling = [0, 5, 10, 20, 30, 40, 80].map(worth);
    expect(falling.toSorted((a, b) => b - a)).toEqual(falling);
  });

  test("pays for what follows at its chance: removal by a workshop, a post, its clamp and a dose of paste, by hand", () => {
    const { contingency } = failing("free-seatpost", { ...STUCK, workshop: { hourlyGoal: 60 } });
    const bought = ["svc-post-removal", "seatpost", "seat-clamp", "assembly-paste"].map(
      (part) => expectedPrice(BOOK.service.parts.get(part)!, "mid", new Map()).mean,
    );
    expect(contingency.money.mean).toBeCloseTo(0.35 * bought.reduce((sum, price) => sum + price, 0), 9);
  });

  test("follows a failure of what follows no further: a thread that cannot be chased ends the reckoning", () => {
    const { contingency, endsFrame } = failing("free-bb", { found: { "bb-removable": "stuck" } });
    expect(contingency.money.mean).toBeCloseTo(0.18 * priceOf("svc-bb-tap", "mid"), 9);
    expect(endsFrame).toBe(0);
  });

  test("ends the frame outright where nothing can follow, and the title where the number is reported", () => {
    expect(failing("cold-set", { found: { "rear-alignment": "out" } })).toMatchObject({
      endsFrame: 0.06,
      endsTitle: 0,
    });
    const asked = (serial: string) => failing("query-serial", { found: { serial } });
    expect(["clear", "illegible", "not-queried"].map((level) => asked(level).endsTitle)).toEqual([
      0, 0.01, 0.03,
    ]);
    expect(asked("not-queried").endsFrame).toBe(0);
  });

  test("done for both wheels fails no likelier than its row says, shared evenly between them", () => {
    const weak: Found = { bike: { componentTier: "top" }, found: { caliper: "sticky" } };
    const wheel = (place: Place) => failing("overhaul-calipers", weak, place).contingency;
    const both = risksOf(openedCourse("make-safe", weak));
    expect(both.money.mean).toBeCloseTo(2 * wheel("rear").money.mean, 9);
    expect(wheel("front")).toEqual(wheel("rear"));
    const caliper = BOOK.service.parts.get("caliper-rim")!;
    expect(wheel("rear").money.mean).toBeCloseTo(
      (0.12 / 2) * expectedPrice(caliper, "top", new Map()).mean,
      9,
    );
  });

  test("counted by the wheel may fail at each", () => {
    const level = { level: "worn" };
    const one = openedCourse("make-safe", {
      ...DISCS,
      found: { rotor: { front: level, rear: { level: "ok" } } },
    });
    const two = openedCourse("make-safe", DISCS);
    expect(risksOf(two).money.mean).toBeCloseTo(2 * risksOf(one).money.mean, 9);
  });
});

describe("a plan with several risks", () => {
  test("keeps its frame only if every one of them does: chances multiply", () => {
    const found: Found = {
      bike: { componentTier: "top", postMaterial: "aluminium" },
      found: { "seatpost-free": "stuck", "rear-alignment": "out" },
    };
    const course = openedCourse("make-safe", found);
    const { plan } = course;
    expect(plan.tasks.map(({ operation }) => operation.id)).toEqual(
      expect.arrayContaining(["free-seatpost", "cold-set"]),
    );
    const givenUp = 1 - plan.tasks.find(({ openEnd }) => openEnd !== null)!.openEnd!.releaseChance;
    expect(risksOf(course).frameHolds).toBeCloseTo((1 - givenUp * 0.1) * (1 - 0.06), 12);
  });
});
