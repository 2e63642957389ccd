import { describe, expect, test } from "vitest";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import { outcomeOf } from "../../../worker/engine/decision/outcome.ts";
import type { Pace } from "../../../worker/engine/decision/pace.ts";
import { drawOutcomes, uniforms } from "./drawnOutcomes.ts";
import { openedCourse } from "./lookedOver.ts";

const COUNT = 100_000;

/** Total margin over total hours of many flips, its standard error by the delta method, and the mean of the single flips' ratios with its own. */
function longRun(margins: Float64Array, hours: Float64Array) {
  const mean = (of: (i: number) => number) => {
    let sum = 0;
    for (let i = 0; i < margins.length; i++) sum += of(i);
    return sum / margins.length;
  };
  const hoursEach = mean((i) => hours[i]!);
  const rate = mean((i) => margins[i]!) / hoursEach;
  const error = Math.sqrt(mean((i) => (margins[i]! - rate * hours[i]!) ** 2) / margins.length) / hoursEach;
  const meanOfRatios = mean((i) => margins[i]! / hours[i]!);
  const spread = mean((i) => (margins[i]! / hours[i]! - meanOfRatios) ** 2);
  return { rate, error, meanOfRatios, errorOfRatios: Math.sqrt(spread / margins.length) };
}

/** A flip that went as foreseen: as good as certain, a deviation of a millionth. */
function sure(chance: number, margin: number, hours: number): Branch {
  return {
    chance,
    price: { logMedian: Math.log(Math.max(1, margin)), logSd: 1e-6 },
    share: 1,
    outlay: { mean: margin > 0 ? 0 : 1 - margin, variance: 0, third: 0 },
    minutes: { mean: 60 * hours, variance: 0 },
    covariance: 0,
    otherMinutes: 0,
  };
}

describe("margin per hour is what 100 000 flips earn together for each hour", () => {
  test("of a known joint distribution: quick ones that bring little, long ones that bring more, and failures", () => {
    // Chance, margin, hours. E[M] = 36.5, E[H] = 4.9; E[M / H] = 13.11 by hand.
    const flips = [
      [0.3, 20, 1],
      [0.5, 75, 5],
      [0.15, 0, 8],
      [0.05, -140, 18],
    ] as const;
    const told = outcomeOf(
      flips.map(([chance, margin, hours]) => sure(chance, margin, hours)),
      { hourlyGoal: 8, speedFactor: 1, speedSpread: 1e-6 },
    );
    expect(told.marginPerHour!.rate).toBeCloseTo(36.5 / 4.9, 6);
    const next = uniforms(20261126);
    const [margins, hours] = [new Float64Array(COUNT), new Float64Array(COUNT)];
    for (let i = 0; i < COUNT; i++) {
      const u = next();
      const [, margin, time] = flips[u < 0.3 ? 0 : u < 0.8 ? 1 : u < 0.95 ? 2 : 3]!;
      margins[i] = margin;
      hours[i] = time;
    }
    const run = longRun(margins, hours);
    expect(Math.abs(run.rate - told.marginPerHour!.rate)).toBeLessThan(4 * run.error);
    // Adding up the ratios would tell another number: 13.11 and not 7.45.
    const ratios = flips.reduce((sum, [chance, margin, time]) => sum + (chance * margin) / time, 0);
    expect(Math.abs(run.meanOfRatios - ratios)).toBeLessThan(4 * run.errorOfRatios);
    expect(run.meanOfRatios - run.rate).toBeGreaterThan(20 * (run.error + run.errorOfRatios));
  });

  test.each([
    ["restore", ["bb-bearing", "headset", "stem-free"]],
    ["make-safe", ["seatpost-free", "bb-removable"]],
    ["sell-as-found", ["frame-cracks"]],
  ] as const)("of a real find with checks not made: %s", (course, unseen) => {
    const { branches } = openedCourse(course, { unseen, found: { chain: "worn" } });
    const pace: Pace = { hourlyGoal: 8, speedFactor: 1.1, speedSpread: 0.3 };
    const { marginPerHour } = outcomeOf(branches, pace);
    const { margins, hours } = drawOutcomes(branches, pace, COUNT, 20261126);
    const run = longRun(margins, hours);
    expect(Math.abs(run.rate - marginPerHour!.rate)).toBeLessThan(4 * run.error);
    expect(Math.abs(run.meanOfRatios - run.rate)).toBeGreaterThan(4 * (run.error + run.errorOfRatios));
  });
});
