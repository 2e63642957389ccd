import { afterAll, describe, expect, test } from "vitest";
import type { Branch } from "../../worker/engine/decision/branch.ts";
import { outcomeOf } from "../../worker/engine/decision/outcome.ts";
import type { Pace } from "../../worker/engine/decision/pace.ts";
import { weighCourses } from "../../worker/engine/decision/weigh.ts";
import { drawOutcomes } from "../engine/decision/drawnOutcomes.ts";
import { situationFor } from "../engine/decision/lookedOver.ts";
import { CASES, requestOf } from "../engine/workedCases/workedCase.ts";

/**
 * Shows what the sums at nodes cost: ten million draws of each course of the first two worked cases, a million of the others, every chance within three
 * ten-thousandths and four standard errors of the draws.
 */

const FULL = 10_000_000;
const PART = 1_000_000;

/** What the sums at nodes may cost in chance, as decision/outlayShape says: a few ten-thousandths. */
const NODES_COST = 3e-4;

/** Quantiles are sought to a thousandth, of a euro or an hour. */
const LANDED = 2e-3;

type Course = readonly [name: string, branches: readonly Branch[], pace: Pace, count: number];

const COURSES: readonly Course[] = CASES.filter(({ expect: { stop } }) => !stop).flatMap((one, place) => {
  const situation = situationFor(requestOf(one));
  return weighCourses(situation).flatMap((course): Course[] =>
    course.open && course.course !== "leave"
      ? [[`${one.id} ${course.course}`, course.branches, situation.settled.workshop, place < 2 ? FULL : PART]]
      : [],
  );
});

/** Mean and variance of draws. */
function momentsOf(draws: Float64Array): { mean: number; variance: number } {
  const mean = draws.reduce((sum, one) => sum + one, 0) / draws.length;
  return { mean, variance: draws.reduce((sum, one) => sum + (one - mean) ** 2, 0) / draws.length };
}

/** Variance of one draw's pull on the ratio of two means (delta method). */
function pullVariance(margins: Float64Array, hours: Float64Array, rate: number): number {
  const meanHours = momentsOf(hours).mean;
  return (
    margins.reduce((sum, one, place) => sum + ((one - rate * hours[place]!) / meanHours) ** 2, 0) /
    margins.length
  );
}

/** Largest distances from the draws' own quantiles over courses of ten million draws, in standard deviations of the margin; told at the end. */
const largest = { mean: 0, "10 %": 0, "50 %": 0, "90 %": 0 };

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
  afterAll(() => {
    const told = Object.entries(largest).map(([what, error]) => `${what} ${error.toExponential(1)}`);
    console.info(`Largest error of the margin, in its standard deviations: ${told.join(", ")}`);
  });

  test.each(COURSES)(
    "%s: mean margin, hours and rate within four standard errors",
    (_, branches, pace, count) => {
      const outcome = outcomeOf(branches, pace);
      const { margins, hours } = drawOutcomes(branches, pace, count, 71);
      const [margin, worked] = [momentsOf(margins), momentsOf(hours)];
      const { rate } = outcome.marginPerHour!;
      for (const [drawn, told, variance] of [
        [margin.mean, outcome.margin.mean, margin.variance],
        [worked.mean, outcome.hours.mean, worked.variance],
        [margin.mean / worked.mean, rate, pullVariance(margins, hours, rate)],
      ] as const)
        expect(Math.abs(drawn - told)).toBeLessThanOrEqual(4 * Math.sqrt(variance / count) + 1e-9);
      if (count < FULL) return;
      margins.sort();
      const sd = Math.sqrt(margin.variance);
      for (const [what, p, told] of [
        ["10 %", 0.1, outcome.margin.p10],
        ["50 %", 0.5, outcome.margin.p50],
        ["90 %", 0.9, outcome.margin.p90],
      ] as const) {
        const error = Math.abs(margins[Math.floor(p * count)]! - told) / sd;
        largest[what] = Math.max(largest[what], error);
        expect(error, what).toBeLessThanOrEqual(0.005);
      }
      largest.mean = Math.max(largest.mean, Math.abs(margin.mean - outcome.margin.mean) / sd);
    },
  );

  test.each(COURSES)("%s", (_, branches, pace, count) => {
    const outcome = outcomeOf(branches, pace);
    const { margins, hours, rates } = drawOutcomes(branches, pace, count, 20_261_125);
    for (const draws of [margins, hours, rates]) draws.sort();
    const allowed = (p: number) => NODES_COST + 4 * Math.sqrt((p * (1 - p)) / count);
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
