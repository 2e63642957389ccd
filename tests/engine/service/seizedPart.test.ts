import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { randomNumbers } from "../../../data/scripts/randomNumbers.ts";
import type { ThreePoint } from "../../../worker/engine/quantity.ts";
import {
  minutesUntil,
  type ReleaseTime,
  releaseTime,
  stillSeized,
} from "../../../worker/engine/service/seizedPart.ts";
import { stopLimit } from "../../../worker/engine/service/stopLimit.ts";
import { standardNormals } from "../statistics/drawnFrom.ts";

const SEED = 20261126;
const RULE = { stepMinutes: 15, mostMinutes: 240 };
const STUCK: ThreePoint = { optimistic: 10, likely: 60, pessimistic: 240 };
const STIFF: ThreePoint = { optimistic: 5, likely: 13, pessimistic: 30 };

/** Three times that differ, near and far apart. */
const anyEstimate = fc
  .tuple(
    fc.double({ min: 0, max: 60, noNaN: true }),
    fc.double({ min: 1, max: 100, noNaN: true }),
    fc.double({ min: 1.1, max: 60, noNaN: true }),
  )
  .map(([from, median, ratio]) => ({
    optimistic: from,
    likely: from + median,
    pessimistic: from + ratio * median,
  }));
const anyChance = fc.double({ min: 0.001, max: 0.95, noNaN: true });
const anyRelease = fc.tuple(anyEstimate, anyChance).map(([times, chance]) => releaseTime(times, chance));

/** Multiples of the step at which work may be given up. */
function limitsOf({ from }: ReleaseTime): readonly number[] {
  const first = Math.max(1, Math.ceil(from / RULE.stepMinutes));
  const last = RULE.mostMinutes / RULE.stepMinutes;
  return Array.from({ length: last - first + 1 }, (_, n) => (first + n) * RULE.stepMinutes);
}

describe("the time until a seized part comes free", () => {
  test("is out by the pessimistic time but for the table's chance, half of those that come free by the likely one", () => {
    fc.assert(
      fc.property(anyEstimate, anyChance, (times, chance) => {
        const release = releaseTime(times, chance);
        const { never } = release;
        const fast = (at: number) => (stillSeized(release, at) - never) / (1 - never);
        expect(fast(times.likely)).toBeCloseTo(0.5, 7);
        // An exponential time is slower to end: it keeps the chance as far as no part need come free sooner for it.
        if (Number.isFinite(release.shape) || never > 0)
          expect(stillSeized(release, times.pessimistic)).toBeCloseTo(chance, 7);
        else expect(stillSeized(release, times.pessimistic)).toBeGreaterThanOrEqual(chance - 1e-9);
        if (Number.isFinite(release.shape))
          expect(fast(times.pessimistic)).toBeCloseTo(Math.min(chance, 0.05), 7);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("a chance of 35 in 100 with times 10 60 240: never in 1 - 0.65 / 0.95", () => {
    const release = releaseTime(STUCK, 0.35);
    expect(release.never).toBeCloseTo(1 - 0.65 / 0.95, 12);
    expect(stillSeized(release, 10)).toBe(1);
    expect(stillSeized(release, 1e9)).toBeCloseTo(release.never, 9);
  });

  test("times too near for a hazard that falls are exponential, with the likely time as median: 5 13 30", () => {
    const release = releaseTime(STIFF, 0.04);
    expect(release).toEqual({
      from: 5,
      never: 0,
      shape: Number.POSITIVE_INFINITY,
      scale: expect.closeTo(8 / Math.LN2, 9),
    });
  });

  test("has a hazard that never rises", () => {
    fc.assert(
      fc.property(anyRelease, (release) => {
        const hazard = (at: number) => {
          const left = stillSeized(release, at);
          return (left - stillSeized(release, at + 0.5)) / left;
        };
        for (let at = release.from; at < release.from + 300; at += 10)
          expect(hazard(at + 10)).toBeLessThanOrEqual(hazard(at) * (1 + 1e-6) + 1e-12);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("of a seized post falls from minute to minute", () => {
    const release = releaseTime(STUCK, 0.35);
    const hazards = [10, 30, 60, 120, 200].map(
      (at) => Math.log(stillSeized(release, at)) - Math.log(stillSeized(release, at + 1)),
    );
    expect(hazards).toEqual(hazards.toSorted((a, b) => b - a));
    expect(hazards[4]!).toBeLessThan(0.5 * hazards[0]!);
  });
});

/** A gamma-distributed number of whole or broken shape above 1 (Marsaglia & Tsang 2000). */
function gamma(shape: number, random: () => number, normal: () => number): number {
  const d = shape - 1 / 3;
  for (;;) {
    const z = normal();
    const v = (1 + z / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - random()) < z ** 2 / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}

describe("minutes until free or given up", () => {
  test.each([
    ["a stuck post", releaseTime(STUCK, 0.35)],
    ["a stiff one", releaseTime(STIFF, 0.04)],
    ["one that may take days", releaseTime({ optimistic: 10, likely: 60, pessimistic: 500 }, 0.04)],
  ])("%s: mean and variance as of 100,000 times drawn, each part with a rate of its own", (_, release) => {
    const random = randomNumbers(SEED);
    const normal = standardNormals(random);
    const { from, never, shape, scale } = release;
    const draws = 1e5;
    for (const limit of [30, 90, 240]) {
      let [sum, squares, fourths] = [0, 0, 0];
      const expected = minutesUntil(release, limit);
      for (let n = 0; n < draws; n++) {
        const rate = Number.isFinite(shape) ? gamma(shape, random, normal) / scale : 1 / scale;
        const time = random() < never ? Infinity : from - Math.log(1 - random()) / rate;
        const off = Math.min(time, limit) - expected.mean;
        sum += off;
        squares += off ** 2;
        fourths += off ** 4;
      }
      const variance = squares / draws;
      expect(Math.abs(sum / draws)).toBeLessThan(4 * Math.sqrt(variance / draws));
      const spread = Math.sqrt((fourths / draws - variance ** 2) / draws);
      expect(Math.abs(variance - expected.variance)).toBeLessThan(4 * spread);
    }
  });

  test("are the integral of the chance that it is not yet free, whatever the fit", () => {
    fc.assert(
      fc.property(anyRelease, fc.double({ min: 1, max: 300, noNaN: true }), (release, beyond) => {
        const limit = release.from + beyond;
        // Simpson's rule on 2000 pieces beyond the soonest release.
        const pieces = 2000;
        const width = beyond / pieces;
        let [mean, square] = [release.from, release.from ** 2];
        for (let n = 0; n <= pieces; n++) {
          const at = release.from + n * width;
          const weight = ((n === 0 || n === pieces ? 1 : n % 2 === 1 ? 4 : 2) * width) / 3;
          mean += weight * stillSeized(release, at);
          square += weight * 2 * at * stillSeized(release, at);
        }
        const found = minutesUntil(release, limit);
        expect(found.mean / mean).toBeCloseTo(1, 5);
        expect(Math.abs(found.variance - (square - mean ** 2))).toBeLessThan(1e-5 * square + 1e-6);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe("when to give up", () => {
  const worth = fc.double({ min: 0, max: 500, noNaN: true });
  const cost = fc.double({ min: 0, max: 2, noNaN: true });

  test("is the limit of the highest expected net benefit, as trying them all finds", () => {
    fc.assert(
      fc.property(anyRelease, worth, cost, (release, gain, minute) => {
        const left = (limit: number) =>
          (1 - stillSeized(release, limit)) * gain - minutesUntil(release, limit).mean * minute;
        const found = stopLimit(release, gain, minute, RULE);
        expect(limitsOf(release)).toContain(found);
        expect(left(found)).toBeGreaterThanOrEqual(Math.max(...limitsOf(release).map(left)) - 1e-7);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("comes later the more a free part is worth, sooner the more an hour is worth", () => {
    fc.assert(
      fc.property(anyRelease, worth, worth, cost, cost, (release, gain, more, minute, dearer) => {
        const limit = stopLimit(release, gain, minute, RULE);
        expect(stopLimit(release, gain + more, minute, RULE)).toBeGreaterThanOrEqual(limit);
        expect(stopLimit(release, gain, minute + dearer, RULE)).toBeLessThanOrEqual(limit);
      }),
      { seed: SEED, numRuns: 500 },
    );
    const release = releaseTime(STUCK, 0.5);
    const limitAt = (gain: number, goal: number) => stopLimit(release, gain, goal / 60, RULE);
    expect(limitAt(20, 10)).toBeLessThan(limitAt(60, 10));
    expect(limitAt(60, 10)).toBeLessThan(limitAt(200, 10));
    expect(limitAt(60, 10)).toBeGreaterThan(limitAt(60, 20));
  });

  test("comes at the ceiling at the latest, and after the soonest release at the soonest", () => {
    expect(stopLimit(releaseTime(STUCK, 0.35), 1e6, 0.1, RULE)).toBe(240);
    const late = { optimistic: 31, likely: 60, pessimistic: 240 };
    expect(stopLimit(releaseTime(late, 0.35), 0, 1, RULE)).toBe(45);
  });
});
