import { describe, expect, test } from "vitest";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import { outcomeOf } from "../../../worker/engine/decision/outcome.ts";
import type { Pace } from "../../../worker/engine/decision/pace.ts";
import { weighCourses } from "../../../worker/engine/decision/weigh.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";
import { drawOutcomes } from "./drawnOutcomes.ts";
import { lookedOver, situationFor } from "./lookedOver.ts";

const COUNT = 100_000;
const PACE: Pace = { hourlyGoal: 8, speedFactor: 1, speedSpread: 0.15 };

/** Made up: sale, partial loss, total loss; spread wide enough that approximations show. */
const MADE_UP: readonly Branch[] = [
  {
    chance: 0.7,
    price: { logMedian: Math.log(300), logSd: 0.3 },
    share: 0.855,
    outlay: { mean: 140, variance: 625, third: 0 },
    minutes: { mean: 560, variance: 4000 },
    covariance: 0,
    otherMinutes: 40,
  },
  {
    chance: 0.25,
    price: { logMedian: Math.log(90), logSd: 0.4 },
    share: 0.63,
    outlay: { mean: 60, variance: 100, third: 0 },
    minutes: { mean: 420, variance: 2500 },
    covariance: 0,
    otherMinutes: 40,
  },
  {
    chance: 0.05,
    price: null,
    share: 0,
    outlay: { mean: 50, variance: 25, third: 0 },
    minutes: { mean: 30, variance: 20 },
    covariance: 0,
    otherMinutes: 40,
  },
];

function realBranches() {
  return CASES.filter(({ expect: { stop } }) => !stop).flatMap((one) => {
    const situation = situationFor(requestOf(one));
    return weighCourses(situation).flatMap((course) =>
      course.open && course.course !== "leave"
        ? [[`${one.id} ${course.course}`, course.branches, situation.settled.workshop] as const]
        : [],
    );
  });
}

const ALL: readonly (readonly [string, readonly Branch[], Pace])[] = [
  ["made up", MADE_UP, PACE],
  ...realBranches(),
];

/** Quantiles are sought to a thousandth; at a certain amount (the price lost with a reported bike) many draws stand on one spot. */
const LANDED = 2e-3;

/** Share at or below x of draws that are sorted. */
function below(draws: Float64Array, x: number): number {
  let [low, high] = [0, draws.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (draws[middle]! <= x) low = middle + 1;
    else high = middle;
  }
  return low / draws.length;
}

/** What the sums at nodes may cost in chance, as decision/outlayShape says: a few ten-thousandths. */
const NODES_COST = 3e-4;

/** Four standard errors of a share p of the draws. */
const fourErrors = (p: number) => 4 * Math.sqrt((p * (1 - p)) / COUNT);

describe("the distribution of a course", () => {
  test("has the mean of the closed form: chances times share x exp(m + s^2 / 2) less outlay", () => {
    const { margin, hours, netBenefit, marginPerHour } = outcomeOf(MADE_UP, PACE);
    const byHand =
      0.7 * (0.855 * 300 * Math.exp(0.3 ** 2 / 2) - 140) +
      0.25 * (0.63 * 90 * Math.exp(0.4 ** 2 / 2) - 60) +
      0.05 * -50;
    const hoursByHand = (0.7 * 600 + 0.25 * 460 + 0.05 * 70) / 60;
    expect(margin.mean).toBeCloseTo(byHand, 9);
    expect(hours.mean).toBeCloseTo(hoursByHand, 9);
    expect(netBenefit).toBeCloseTo(byHand - 8 * hoursByHand, 9);
    expect(marginPerHour!.rate).toBeCloseTo(byHand / hoursByHand, 9);
  });

  test.each(ALL)(
    "%s: agrees with 10^5 draws of the same branches within four standard errors",
    (name, branches, pace) => {
      const outcome = outcomeOf(branches, pace);
      const { margins, hours, rates } = drawOutcomes(branches, pace, COUNT, seedOf(name));
      for (const draws of [margins, hours, rates]) draws.sort();
      const quantiles: (readonly [string, Float64Array, number, number])[] = [
        ["margin", margins, 0.1, outcome.margin.p10],
        ["margin", margins, 0.5, outcome.margin.p50],
        ["margin", margins, 0.9, outcome.margin.p90],
        ...outcome.margin.twentieths.map((value, i) => ["margin", margins, (i + 0.5) / 20, value] as const),
        ["hours", hours, 0.1, outcome.hours.p10],
        ["hours", hours, 0.5, outcome.hours.p50],
        ["hours", hours, 0.9, outcome.hours.p90],
        ["rate", rates, 0.1, outcome.marginPerHour!.p10],
        ["rate", rates, 0.9, outcome.marginPerHour!.p90],
      ];
      const off = quantiles.filter(
        ([, draws, p, value]) =>
          below(draws, value - LANDED) > p + fourErrors(p) ||
          below(draws, value + LANDED) < p - fourErrors(p),
      );
      expect(off.map(([what, , p]) => `${what} ${p}`)).toEqual([]);
      for (const [found, told] of [
        [below(margins, -1e-9), outcome.lossProbability],
        [below(rates, pace.hourlyGoal), outcome.belowGoalProbability],
      ] as const)
        expect(Math.abs(found - told)).toBeLessThanOrEqual(NODES_COST + fourErrors(told));
    },
  );

  test("is in order: twentieths rise, and 10, 50, 90 % with them", () => {
    for (const [, branches, pace] of ALL) {
      const { margin, hours, marginPerHour } = outcomeOf(branches, pace);
      expect([...margin.twentieths].sort((a, b) => a - b)).toEqual(margin.twentieths);
      for (const band of [margin, hours]) {
        expect(band.p10).toBeLessThanOrEqual(band.p50);
        expect(band.p50).toBeLessThanOrEqual(band.p90);
      }
      expect(marginPerHour!.p10).toBeLessThanOrEqual(marginPerHour!.p90);
      expect(margin.twentieths[1]).toBeLessThanOrEqual(margin.p10);
      expect(margin.twentieths[2]).toBeGreaterThanOrEqual(margin.p10);
    }
  });

  test("a certain outcome is certain: no work, no sale, a fee paid", () => {
    const fee: Branch = {
      chance: 1,
      price: null,
      share: 0,
      outlay: { mean: 3, variance: 0, third: 0 },
      minutes: { mean: 0, variance: 0 },
      covariance: 0,
      otherMinutes: 0,
    };
    const { margin, hours, lossProbability, marginPerHour, netBenefit } = outcomeOf([fee], PACE);
    expect(margin.mean).toBe(-3);
    for (const value of [margin.p10, margin.p50, margin.p90, ...margin.twentieths])
      expect(value).toBeCloseTo(-3, 2);
    expect(hours).toEqual({ mean: 0, p10: 0, p50: 0, p90: 0 });
    expect([lossProbability, marginPerHour, netBenefit]).toEqual([1, null, -3]);
  });

  test("a branch without a chance changes nothing", () => {
    const ghost: Branch = { ...MADE_UP[0]!, chance: 0, outlay: { mean: 1e6, variance: 0, third: 0 } };
    expect(outcomeOf([...MADE_UP, ghost], PACE)).toEqual(outcomeOf(MADE_UP, PACE));
  });

  test("the rate is the long-run rate, not the mean of single rates", () => {
    const { marginPerHour } = outcomeOf(MADE_UP, PACE);
    const { rates, margins, hours } = drawOutcomes(MADE_UP, PACE, COUNT, 7);
    const mean = (draws: Float64Array) => draws.reduce((sum, one) => sum + one, 0) / COUNT;
    expect(Math.abs(mean(margins) / mean(hours) - marginPerHour!.rate)).toBeLessThan(0.15);
    expect(Math.abs(mean(rates) - marginPerHour!.rate)).toBeGreaterThan(0.5);
  });

  test("purchase and travel lie ahead only while the bike is not paid for", () => {
    const purchase = { price: 90, travelMinutes: 60, travelCost: 5 };
    const netBenefit = (paid: boolean) => {
      const courses = weighCourses(situationFor(lookedOver({ find: { purchase: { ...purchase, paid } } })));
      return courses.map((course) =>
        course.open && course.course !== "leave" ? course.expected.netBenefit : 0,
      );
    };
    const ahead = netBenefit(false);
    netBenefit(true).forEach((sunk, index) => {
      if (sunk !== 0) expect(sunk - ahead[index]!).toBeCloseTo(90 + 5 + 8, 9);
    });
  });
});

/** A seed for each course, from its name. */
function seedOf(name: string): number {
  return [...name].reduce((seed, letter) => (seed * 31 + letter.charCodeAt(0)) >>> 0, 11);
}
