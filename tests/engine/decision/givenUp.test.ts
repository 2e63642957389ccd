import { describe, expect, test } from "vitest";
import { scaledBetaVariance } from "../../../worker/engine/statistics/scaledBeta.ts";
import { playedCourses } from "../walker/finds.ts";

const branchesOf = (wanted: string) =>
  playedCourses()
    .find(({ name }) => name === wanted)!
    .course.branches.filter(({ price }) => price === null);

describe("a frame that is lost, where nothing is sold that would smooth what was spent", () => {
  test("keeps the shape of the one price that makes up most of it: the workshop's fee for the post", () => {
    const [lost, ...others] = branchesOf("A8 make-safe");
    expect(others).toEqual([]);
    const { widest, variance } = lost!.outlay;
    expect(scaledBetaVariance(widest!)).toBeLessThanOrEqual(variance);
    expect(scaledBetaVariance(widest!)).toBeGreaterThan(0.95 * variance);
  });

  test("is told apart by what was spent: with the wheel that the hub gear called for, and without", () => {
    const [dear, cheap, ...others] = branchesOf("yellow-folder restore").sort(
      (a, b) => b.outlay.mean - a.outlay.mean,
    );
    expect(others).toEqual([]);
    expect(dear!.outlay.mean).toBeGreaterThan(5 * cheap!.outlay.mean);
    expect(dear!.chance / (dear!.chance + cheap!.chance)).toBeCloseTo(0.2, 2);
  });
});
