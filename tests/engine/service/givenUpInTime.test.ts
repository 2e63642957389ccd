import { describe, expect, test } from "vitest";
import { reportPlan } from "../../../worker/engine/decision/reportedPlan.ts";
import type { Bench } from "../../../worker/engine/service/bench.ts";
import { failuresOf } from "../../../worker/engine/service/failure.ts";
import { givenUpInTime } from "../../../worker/engine/service/givenUpInTime.ts";
import { buildTask } from "../../../worker/engine/service/task.ts";
import { type Found, lookedOver, openedCourse, situationFor } from "../decision/lookedOver.ts";
import { BOOK } from "../decision/shippedBook.ts";

const STUCK: Found = {
  bike: { postMaterial: "aluminium", componentTier: "top" },
  found: { "seatpost-free": "stuck" },
};

function freed(bench: Bench, id = "free-seatpost") {
  const task = givenUpInTime(buildTask(BOOK.service.operations.get(id)!, "bike", bench), bench);
  return { task, end: task.openEnd! };
}
const benchOf = (found: Found) => situationFor(lookedOver(found)).bench;

describe("a job whose end is open", () => {
  test("stands in the plan with the minutes until it is free or given up, not with its three-point minutes", () => {
    const { plan } = openedCourse("restore", STUCK);
    const task = plan.tasks.find(({ operation }) => operation.id === "free-seatpost")!;
    expect(task.minutes).toEqual(task.openEnd!.minutes);
    expect(task.minutes.mean).toBeLessThan(task.openEnd!.limit);
  });

  test("fails with the chance that it is given up, and what follows is paid at that chance", () => {
    const bench = benchOf({ ...STUCK, workshop: { hourlyGoal: 60 } });
    const { task, end } = freed(bench);
    const givenUp = 1 - end.releaseChance;
    expect(end.limit).toBeLessThan(240);
    // More often than the table's 35 in 100, which counts four hours of trying.
    expect(givenUp).toBeGreaterThan(0.35);
    const [workshop, saw] = failuresOf(task, bench);
    expect([workshop!.endsFrame, saw!.endsFrame]).toEqual([
      expect.closeTo(givenUp * 0.1, 12),
      expect.closeTo(givenUp * 0.2, 12),
    ]);
    const plain = failuresOf({ ...task, openEnd: null }, bench)[0]!;
    expect(workshop!.contingency.money.mean / plain.contingency.money.mean).toBeCloseTo(givenUp / 0.35, 9);
    // Given up late and followed by more work: the two go together.
    expect(workshop!.contingency.minutes.variance).toBeGreaterThan(plain.contingency.minutes.variance);
  });

  test("is tried the longer the dearer the frame that the way on puts at risk", () => {
    const bench = benchOf({ ...STUCK, workshop: { hourlyGoal: 45 } });
    const limits = [0, 300, 900].map((frameAtStake) => freed({ ...bench, frameAtStake }).end.limit);
    expect(limits[0]!).toBeLessThan(limits[1]!);
    expect(limits[1]!).toBeLessThan(limits[2]!);
  });

  test("is worth the cheapest way on: a stem sawn off wants a new stem, its time and its dismantling", () => {
    const bench = benchOf({ bike: { steering: "quill" }, found: { "stem-free": "stuck" } });
    const { task, end } = freed(bench, "free-stem");
    const [way] = failuresOf({ ...task, openEnd: null }, bench);
    // The table's chance: kept under a roof, 25 in 100.
    const { money, minutes } = way!.contingency;
    const hour = (bench.workshop.hourlyGoal * bench.workshop.speedFactor) / 60;
    expect(end.worth).toBeCloseTo((money.mean + minutes.mean * hour) / 0.25, 9);
  });

  test("is told with its limit at the user's speed, its chance and what the way on costs", () => {
    const found: Found = { ...STUCK, workshop: { speedFactor: 1.2 } };
    const course = openedCourse("restore", found);
    const situation = situationFor(lookedOver(found));
    const { end } = freed(situation.bench);
    expect(reportPlan(course, situation.settled).stopLimits).toEqual([
      {
        operation: "free-seatpost",
        name: "Free a seized seatpost",
        minutes: end.limit * 1.2,
        releaseChance: end.releaseChance,
        fallback: -end.worth,
      },
    ]);
  });

  test("no other job has a limit", () => {
    const { plan } = openedCourse("restore", { found: { "tyre-condition": "perished" } });
    expect(plan.tasks.every(({ openEnd }) => openEnd === null)).toBe(true);
  });
});

describe("the frame at stake", () => {
  test("is what a bike to ride brings over its parts without the frame, so more on a better bike", () => {
    const stakes = (["entry", "mid", "top"] as const).map(
      (componentTier) => benchOf({ bike: { componentTier } }).frameAtStake,
    );
    expect(stakes[0]!).toBeGreaterThan(0);
    expect(stakes[1]!).toBeGreaterThan(stakes[0]!);
    expect(stakes[2]!).toBeGreaterThan(stakes[1]!);
  });

  test("is the same whatever faults stand, but for the parts that they spoil", () => {
    const sound = benchOf({}).frameAtStake;
    expect(benchOf({ found: { "seatpost-free": "stuck", chain: "worn" } }).frameAtStake).toBe(sound);
  });
});
