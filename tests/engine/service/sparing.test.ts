import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classSums } from "../../../worker/engine/decision/classSums.ts";
import type { Operation } from "../../../worker/engine/service/operation.ts";
import { failingWhereDone, withJobsSpared } from "../../../worker/engine/service/sparing.ts";
import { NO_WAY, type Uncertainty } from "../../../worker/engine/service/uncertainty.ts";

const chance = fc.double({ min: 0, max: 1, noNaN: true });
const amount = fc.double({ min: 0, max: 60, noNaN: true });
const JOB = 7;

/** A check whose best level spares a job, whose worst brings work; the job, which may fail. */
const made = fc
  .record({
    spared: chance,
    works: chance,
    fails: chance,
    own: amount,
    ownVariance: amount,
    after: amount,
    cure: amount,
  })
  .map(({ spared, works, fails, own, ownVariance, after, cure }) => {
    const whole = spared + works + 0.1;
    const [none, some] = [spared / whole, works / whole];
    const spares = { mean: -own, variance: -ownVariance };
    const check: Uncertainty = {
      of: "bearing",
      job: null,
      resource: null,
      opening: [],
      ways: [
        {
          ...NO_WAY,
          rank: 0,
          chances: Float64Array.of(none),
          money: spares,
          spares: [JOB],
          early: { ...NO_WAY.early, money: spares },
        },
        { ...NO_WAY, rank: 3, chances: Float64Array.of(some), money: { mean: cure, variance: 0 } },
      ],
    };
    const money = { mean: after, variance: 0 };
    const job: Uncertainty = {
      of: "overhaul",
      job: { id: "overhaul" } as Operation,
      resource: JOB,
      opening: [],
      ways: [{ ...NO_WAY, chances: Float64Array.of(fails), money, early: { ...NO_WAY.early, money } }],
    };
    // Beside the job's own cost: what comes of it, with its chance and its variance.
    const outcomes = [
      [none, 0, 0],
      [some * fails, own + cure + after, ownVariance],
      [some * (1 - fails), own + cure, ownVariance],
      [(1 - none - some) * fails, own + after, ownVariance],
      [(1 - none - some) * (1 - fails), own, ownVariance],
    ] as const;
    return { check, job, own, ownVariance, fails, none, outcomes };
  });

describe("a job that an absent fault spares", () => {
  test("costs nothing, does not fail and does not vary: mean, variance and third moment by enumeration", () => {
    fc.assert(
      fc.property(made, ({ check, job, own, ownVariance, outcomes }) => {
        const joint = withJobsSpared(failingWhereDone([job, check]), []);
        expect(joint).toHaveLength(1);
        const sums = classSums(joint, new Set(), 1, []);
        const mean = outcomes.reduce((sum, [p, money]) => sum + p * money, 0);
        const moment = (of: (off: number, variance: number) => number) =>
          outcomes.reduce((sum, [p, money, variance]) => sum + p * of(money - mean, variance), 0);
        expect(own + sums.money[0]!).toBeCloseTo(mean, 8);
        expect(ownVariance + sums.variance[0]!).toBeCloseTo(
          moment((off, v) => off ** 2 + v),
          6,
        );
        expect(sums.third[0]).toBeCloseTo(
          moment((off, v) => off ** 3 + 3 * off * v),
          3,
        );
      }),
    );
  });

  test("fails as seldom as it is done", () => {
    fc.assert(
      fc.property(made, ({ check, job, fails, none }) => {
        const [failing] = failingWhereDone([job, check]);
        expect(failing!.ways[0]!.chances[0]).toBeCloseTo(fails * (1 - none), 12);
      }),
    );
  });

  test("that no check may spare stands as it is", () => {
    fc.assert(
      fc.property(made, ({ check, job }) => {
        const all = [{ ...job, resource: JOB + 1 }, check];
        expect(failingWhereDone(all)).toEqual(all);
        expect(withJobsSpared(all, [])).toBe(all);
      }),
    );
  });
});
