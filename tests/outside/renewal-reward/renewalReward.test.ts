import { describe, expect, test } from "vitest";
import type { Branch } from "../../../worker/engine/decision/branch.ts";
import { outcomeOf } from "../../../worker/engine/decision/outcome.ts";

/** Jobs that turn up with some chance; sources in SOURCE.md. */
interface Jobs {
  readonly searchHours: number;
  readonly jobs: readonly (readonly [chance: number, reward: number, hours: number])[];
  /** Long-run rate where every job is taken. */
  readonly rateOfAll: number;
  readonly meanOfRatios: number;
  /** Long-run rate of who takes only what pays. */
  readonly bestRate: number;
  /** Places of the jobs then taken. */
  readonly taken: readonly number[];
}

const SETS: readonly Jobs[] = [
  {
    searchHours: 1,
    jobs: [
      [0.5, 60, 4],
      [0.3, 90, 3],
      [0.2, 40, 6],
    ],
    rateOfAll: 12.745098039215687,
    meanOfRatios: 17.833333333333332,
    bestRate: 14.615384615384615,
    taken: [0, 1],
  },
  {
    searchHours: 2,
    jobs: [
      [0.4, 30, 2],
      [0.35, 120, 8],
      [0.25, 20, 5],
    ],
    rateOfAll: 8.613138686131387,
    meanOfRatios: 12.25,
    bestRate: 9.642857142857142,
    taken: [0, 1],
  },
];

/** A reward that is as good as certain: a deviation of a millionth of it. */
const SURE = 1e-6;

function branchOf(chance: number, reward: number, hours: number, searchHours: number): Branch {
  return {
    chance,
    price: { logMedian: Math.log(reward), logSd: SURE },
    share: 1,
    outlay: { mean: 0, variance: 0, third: 0 },
    minutes: { mean: 60 * hours, variance: 0 },
    covariance: 0,
    otherMinutes: 60 * searchHours,
  };
}
const paceAt = (hourlyGoal: number) => ({ hourlyGoal, speedFactor: 1, speedSpread: SURE });

describe("margin per hour is a long-run rate (renewal-reward theorem)", () => {
  test.each(SETS)("whoever takes every job earns $rateOfAll an hour", (set) => {
    const branches = set.jobs.map(([chance, reward, hours]) =>
      branchOf(chance, reward, hours, set.searchHours),
    );
    expect(outcomeOf(branches, paceAt(0)).marginPerHour!.rate).toBeCloseTo(set.rateOfAll, 9);
    const ratios = set.jobs.reduce((sum, [chance, reward, hours]) => sum + (chance * reward) / hours, 0);
    expect(ratios).toBeCloseTo(set.meanOfRatios, 9);
  });

  test.each(SETS)(
    "at a goal of $bestRate the net benefit is positive for just the jobs worth taking, and pays for the search",
    (set) => {
      const alone = set.jobs.map(
        ([, reward, hours]) => outcomeOf([branchOf(1, reward, hours, 0)], paceAt(set.bestRate)).netBenefit,
      );
      expect(alone.flatMap((benefit, place) => (benefit > 0 ? [place] : []))).toEqual(set.taken);
      const earned = set.jobs.reduce((sum, [chance], place) => sum + chance * Math.max(0, alone[place]!), 0);
      expect(earned).toBeCloseTo(set.bestRate * set.searchHours, 9);
    },
  );

  test.each(SETS)(
    "whoever takes those alone earns $bestRate an hour, searching for the others in vain",
    (set) => {
      const branches = set.jobs.map(([chance, reward, hours], place): Branch => {
        const taken = branchOf(chance, reward, hours, set.searchHours);
        return set.taken.includes(place)
          ? taken
          : { ...taken, price: null, share: 0, minutes: { mean: 0, variance: 0 } };
      });
      expect(outcomeOf(branches, paceAt(0)).marginPerHour!.rate).toBeCloseTo(set.bestRate, 9);
    },
  );
});
