import { describe, expect, test } from "vitest";
import type { Branch } from "../../worker/engine/decision/branch.ts";
import { outcomeOf } from "../../worker/engine/decision/outcome.ts";
import type { Pace } from "../../worker/engine/decision/pace.ts";
import { weighCourses } from "../../worker/engine/decision/weigh.ts";
import { drawOutcomes } from "../engine/decision/drawnOutcomes.ts";
import { situationFor } from "../engine/decision/lookedOver.ts";
import { CASES, requestOf } from "../engine/workedCases/workedCase.ts";

/**
 * Bounds what the sum at a few nodes costs: ten million draws of each course of the first two worked cases, a million of the others. Most lie within the
 * draws' own error; breaking up a bare frame, whose few euros of outlay are widest beside its price, is off by a thousandth of probability.
 */

const FULL = 10_000_000;
const PART = 1_000_000;

/** Quantiles are sought to a thousandth, of a euro or an hour. */
const LANDED = 2e-3;

/** Error of the sum at nodes, in probability. */
const SUMMED = 1.5e-3;

type Course = readonly [name: string, branches: readonly Branch[], pace: Pace, count: number];

const COURSES: readonly Course[] = CASES.filter(({ expect: { stop } }) => !stop).flatMap((one, place) => {
  const situation = situationFor(requestOf(one));
  return weighCourses(situation).flatMap((course): Course[] =>
    course.open && course.course !== "leave"
      ? [[`${one.id} ${course.course}`, course.branches, situation.settled.workshop, place < 2 ? FULL : PART]]
      : [],
  );
});

/** Place of a value among sorted draws: the share below it. */
function below(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! <= value) low = middle + 1;
    else high = middle;
  }
  return low / sorted.length;
}

describe("the distribution of a course against many draws", () => {
  test.each(COURSES)("%s", (_, branches, pace, count) => {
    const outcome = outcomeOf(branches, pace);
    const { margins, hours, rates } = drawOutcomes(branches, pace, count, 20_261_125);
    for (const draws of [margins, hours, rates]) draws.sort();
    const allowed = (p: number) => SUMMED + 4 * Math.sqrt((p * (1 - p)) / count);
    const quantiles = [
      ...outcome.margin.twentieths.map(
        (value, place) => ["margin", margins, (place + 0.5) / 20, value] as const,
      ),
      ["hours", hours, 0.1, outcome.hours.p10] as const,
      ["hours", hours, 0.5, outcome.hours.p50] as const,
      ["hours", hours, 0.9, outcome.hours.p90] as const,
      ["rate", rates, 0.1, outcome.marginPerHour!.p10] as const,
      ["rate", rates, 0.9, outcome.marginPerHour!.p90] as const,
    ];
    const off = quantiles.filter(
      ([, draws, p, value]) =>
        below(draws, value - LANDED) > p + allowed(p) || below(draws, value + LANDED) < p - allowed(p),
    );
    expect(off.map(([what, , p]) => `${what} ${p}`)).toEqual([]);
    for (const [found, told] of [
      [below(margins, -1e-9), outcome.lossProbability],
      [below(rates, pace.hourlyGoal), outcome.belowGoalProbability],
    ] as const)
      expect(Math.abs(found - told)).toBeLessThanOrEqual(allowed(told));
  });
});
