import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import { expectationOf } from "../../../worker/engine/decision/expectation.ts";
import type { Pace } from "../../../worker/engine/decision/pace.ts";
import { type SensitivityInput, sensitivityOf } from "../../../worker/engine/decision/sensitivity.ts";
import { salePriceVariance, takingsAt } from "../../../worker/engine/decision/takings.ts";
import { gaussHermite } from "../../../worker/engine/statistics/gaussHermite.ts";
import { pick, uniforms } from "./drawnOutcomes.ts";
import { openedCourse } from "./lookedOver.ts";

const PACE: Pace = { hourlyGoal: 10, speedFactor: 1.2, speedSpread: 0.25 };

/** Invented: sold well, sold badly, not sold. */
const BRANCHES: readonly Branch[] = [
  {
    chance: 0.7,
    price: { logMedian: Math.log(300), logSd: 0.3 },
    share: 0.855,
    outlay: { mean: 120, variance: 400, third: 0 },
    minutes: { mean: 500, variance: 0 },
    covariance: 0,
    otherMinutes: 40,
  },
  {
    chance: 0.2,
    price: { logMedian: Math.log(100), logSd: 0.45 },
    share: 0.6,
    outlay: { mean: 150, variance: 400, third: 0 },
    minutes: { mean: 650, variance: 0 },
    covariance: 0,
    otherMinutes: 40,
  },
  {
    chance: 0.1,
    price: null,
    share: 0,
    outlay: { mean: 60, variance: 400, third: 0 },
    minutes: { mean: 200, variance: 0 },
    covariance: 0,
    otherMinutes: 40,
  },
];

const NOTHING_BOUGHT = { mean: 0, variance: 0 };

function inputOf(branches: readonly Branch[], change: Partial<SensitivityInput> = {}): SensitivityInput {
  const pace = change.pace ?? PACE;
  return {
    branches,
    pace,
    expected: expectationOf(branches, pace),
    plannedPurchases: NOTHING_BOUGHT,
    others: [],
    variance: 10_000,
    ...change,
  };
}

const barOf = (input: SensitivityInput, group: string) =>
  sensitivityOf(input).find((one) => one.group === group)!;

describe("what a course's net benefit hangs on", () => {
  test("by hand: one way to go, sold at 200 x y, 8 hours at speed 1, parts for 50", () => {
    const branch: Branch = {
      chance: 1,
      price: { logMedian: Math.log(200), logSd: 0.3 },
      share: 0.9,
      outlay: { mean: 70, variance: 100, third: 0 },
      minutes: { mean: 480, variance: 0 },
      covariance: 0,
      otherMinutes: 60,
    };
    const input = inputOf([branch], { plannedPurchases: { mean: 50, variance: 64 } });
    const z = 1.2815515655446004;
    const price = barOf(input, "salePrice");
    const hours = (1.2 * 480 + 60) / 60;
    expect(price.low.input).toBeCloseTo(180 * Math.exp(-0.3 * z), 9);
    expect(price.high.input).toBeCloseTo(180 * Math.exp(0.3 * z), 9);
    expect(price.high.netBenefit).toBeCloseTo(180 * Math.exp(0.3 * z) - 70 - 10 * hours, 9);
    expect(price.high.rate).toBeCloseTo((180 * Math.exp(0.3 * z) - 70) / hours, 9);
    const mean = 180 * Math.exp(0.3 ** 2 / 2);
    expect(price.share).toBeCloseTo((mean ** 2 * (Math.exp(0.09) - 1)) / 10_000, 12);

    const pace = barOf(input, "pace");
    const slow = 1.2 * Math.exp(0.25 * z - 0.25 ** 2 / 2);
    expect(pace.high.input).toBeCloseTo(slow, 9);
    expect(pace.high.netBenefit).toBeCloseTo(mean - 70 - 10 * (8 * slow + 1), 9);
    expect(pace.high.rate).toBeCloseTo((mean - 70) / (8 * slow + 1), 9);
    expect(pace.high.netBenefit).toBeLessThan(pace.low.netBenefit);
    expect(pace.share).toBeCloseTo((80 ** 2 * 1.2 ** 2 * (Math.exp(0.0625) - 1)) / 10_000, 12);

    const parts = barOf(input, "partPrices");
    expect(parts.low.input).toBeCloseTo(50 - 8 * z, 9);
    expect(parts.high.input).toBeCloseTo(50 + 8 * z, 9);
    expect(parts.low.netBenefit - parts.high.netBenefit).toBeCloseTo(16 * z, 9);
    expect(parts.share).toBeCloseTo(64 / 10_000, 12);
  });

  test("where groups only add, their shares sum to 1", () => {
    const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        figure(20, 900),
        figure(0.05, 0.6),
        figure(0, 900),
        figure(0.01, 0.4),
        figure(1, 5000),
        (price, logSd, minutes, speedSpread, money) => {
          const branch: Branch = {
            ...BRANCHES[0]!,
            chance: 1,
            price: { logMedian: Math.log(price), logSd },
            minutes: { mean: minutes, variance: 0 },
          };
          const pace = { ...PACE, speedSpread };
          const hours = (10 * minutes * 1.2) / 60;
          const variance =
            (0.855 * price) ** 2 * Math.exp(logSd ** 2) * Math.expm1(logSd ** 2) +
            hours ** 2 * Math.expm1(speedSpread ** 2) +
            money;
          const told = sensitivityOf(
            inputOf([branch], { pace, plannedPurchases: { mean: 0, variance: money }, variance }),
          );
          expect(told.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 20261126, numRuns: 300 },
    );
  });

  test("groups worked out elsewhere stand among them, the widest swing first", () => {
    const told = sensitivityOf(
      inputOf(BRANCHES, {
        plannedPurchases: { mean: 40, variance: 25 },
        others: [
          {
            group: "hiddenFaults",
            low: { input: 0, margin: 180, hours: 8 },
            high: { input: 3, margin: -120, hours: 14 },
            varianceOfExpectation: 2500,
          },
          {
            group: "failingJobs",
            low: { input: 0, margin: 60, hours: 8 },
            high: { input: 1, margin: 58, hours: 10 },
            varianceOfExpectation: 20_000,
          },
          {
            group: "workless" as "failingJobs",
            low: { input: 0, margin: 60, hours: 0 },
            high: { input: 1, margin: 58, hours: 10 },
            varianceOfExpectation: 1,
          },
        ],
      }),
    );
    expect(told.map(({ group }) => group).toSorted()).toEqual([
      "failingJobs",
      "hiddenFaults",
      "pace",
      "partPrices",
      "salePrice",
    ]);
    const swings = told.map(({ low, high }) => Math.abs(high.netBenefit - low.netBenefit));
    expect(swings).toEqual(swings.toSorted((a, b) => b - a));
    expect(told[0]).toEqual({
      group: "hiddenFaults",
      low: { input: 0, rate: 22.5, netBenefit: 100 },
      high: { input: 3, rate: -120 / 14, netBenefit: -260 },
      share: 0.25,
    });
    // No work, no rate, no row; more than the whole variance is the whole.
    const failing = told.find(({ group }) => group === "failingJobs")!;
    expect([failing.low.rate, failing.share]).toEqual([7.5, 1]);
  });

  test("a course where nothing varies has no shares and no swing", () => {
    const still = BRANCHES.map((branch) => ({ ...branch, price: null }));
    const told = sensitivityOf(inputOf(still, { pace: { ...PACE, speedSpread: 0 }, variance: 0 }));
    for (const { low, high, share } of told) {
      expect(share).toBe(0);
      expect(high.netBenefit).toBeCloseTo(low.netBenefit, 9);
    }
  });

  test("refuses a variance that is none", () => {
    expect(() => sensitivityOf(inputOf(BRANCHES, { variance: -1 }))).toThrow(
      "variance requires a number of at least 0, got -1",
    );
  });
});

describe("the share of the price that all branches have in common", () => {
  test("is the variance of the takings over it, by quadrature, for spreads that differ and for a real course", () => {
    const { nodes, weights } = gaussHermite(40);
    for (const branches of [BRANCHES, openedCourse("restore").branches, openedCourse("make-safe").branches]) {
      const mean = nodes.reduce((sum, z, i) => sum + weights[i]! * takingsAt(branches, z), 0);
      const square = nodes.reduce((sum, z, i) => sum + weights[i]! * takingsAt(branches, z) ** 2, 0);
      expect(takingsAt(branches, null)).toBeCloseTo(mean, 9);
      expect(salePriceVariance(branches) / (square - mean ** 2)).toBeCloseTo(1, 9);
    }
  });

  test("and of the pace: what two bikes that share the group alone have in common, drawn 200 000 times (Sobol 1993)", () => {
    const count = 200_000;
    const next = uniforms(7);
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const benefit = (z: number, speed: number) => {
      const { price, share, outlay, minutes, otherMinutes } = pick(BRANCHES, next());
      const sold = price ? share * Math.exp(price.logMedian + price.logSd * z) : 0;
      const spent = outlay.mean + Math.sqrt(outlay.variance) * normal();
      const factor = 1.2 * Math.exp(0.25 * speed - 0.25 ** 2 / 2);
      return sold - spent - (10 * (factor * minutes.mean + otherMinutes)) / 60;
    };
    const { netBenefit } = expectationOf(BRANCHES, PACE);
    for (const group of ["salePrice", "pace"] as const) {
      let [sum, squares] = [0, 0];
      for (let i = 0; i < count; i++) {
        const shared = normal();
        const one = group === "salePrice" ? benefit(shared, normal()) : benefit(normal(), shared);
        const other = group === "salePrice" ? benefit(shared, normal()) : benefit(normal(), shared);
        const product = (one - netBenefit) * (other - netBenefit);
        sum += product / count;
        squares += product ** 2 / count;
      }
      const error = Math.sqrt((squares - sum ** 2) / count);
      const told = barOf(inputOf(BRANCHES, { variance: 1e6 }), group).share * 1e6;
      expect(Math.abs(sum - told)).toBeLessThan(4 * error);
      expect(told).toBeGreaterThan(8 * error);
    }
  });
});
