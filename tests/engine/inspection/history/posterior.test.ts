import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ERAS, KEPT } from "../../../../worker/engine/bicycle.ts";
import type { Check } from "../../../../worker/engine/inspection/check.ts";
import { compileInspection } from "../../../../worker/engine/inspection/compileInspection.ts";
import { FACTORS } from "../../../../worker/engine/inspection/history/factor.ts";
import { inspect } from "../../../../worker/engine/inspection/inspect.ts";
import { NO_LINKS, SMALL_CHECKS, SMALL_TABLES, STEEL_TOURER } from "../smallTables.ts";
import { conditioned, type SmallCheck } from "./enumeratedJoint.ts";

const FINER = ["fork", "brake"];

/** The small checks, two of them with five levels. */
const CHECKS: readonly Check[] = SMALL_CHECKS.filter(({ id }) => id !== "serial").map((check) =>
  FINER.includes(check.id)
    ? {
        ...check,
        levels: [...check.levels, { ...check.levels[2]!, id: "worse" }, { ...check.levels[2]!, id: "worst" }],
      }
    : check,
);

const proportions = (length: number) =>
  fc
    .array(fc.double({ min: 0.002, max: 1, noNaN: true }), { minLength: length, maxLength: length })
    .map((weights) => weights.map((one) => one / weights.reduce((a, b) => a + b, 0)));
const loading = fc.oneof(fc.constant(0), fc.double({ min: 0.05, max: 1, noNaN: true }));

/** 3 to 5 checks on 2 to 4 factors, and for each check the level seen, or none. */
const cases = fc
  .tuple(fc.subarray([...CHECKS], { minLength: 3, maxLength: 5 }), fc.integer({ min: 2, max: 4 }))
  .chain(([checks, factorCount]) =>
    fc.record({
      checks: fc.constant(checks),
      scale: fc.double({ min: 0.5, max: 4, noNaN: true }),
      chances: fc.array(fc.double({ min: 0.02, max: 0.98, noNaN: true }), {
        minLength: factorCount,
        maxLength: factorCount,
      }),
      priors: fc.tuple(...checks.map(({ levels }) => proportions(levels.length))),
      loadings: fc.array(fc.array(loading, { minLength: factorCount, maxLength: factorCount }), {
        minLength: checks.length,
        maxLength: checks.length,
      }),
      seen: fc.tuple(
        ...checks.map(({ levels }) => fc.option(fc.nat(levels.length - 1), { nil: undefined, freq: 2 })),
      ),
    }),
  );

function compiled(
  checks: readonly Check[],
  priors: readonly (readonly number[])[],
  scale: number,
  chances: readonly number[],
  loadings: readonly (readonly number[])[],
) {
  return compileInspection({
    ...SMALL_TABLES,
    checks,
    priors: ERAS.flatMap((era) =>
      KEPT.flatMap((kept) =>
        checks.map(({ id }, at) => ({ check: id, era, kept, probabilities: priors[at]! })),
      ),
    ),
    priorModifiers: [],
    acquittals: [],
    history: {
      scale,
      // A factor beyond the case's own shifts nothing.
      factors: NO_LINKS.factors.map((factor, f) => {
        const chance = chances[f] ?? 0.5;
        return { ...factor, chance: { indoors: chance, sheltered: chance, outdoors: chance } };
      }),
      loadings: checks.map(({ id }, at) => ({
        check: id,
        ...Object.fromEntries(FACTORS.map((name, f) => [name, loadings[at]![f] ?? 0])),
      })),
    },
  });
}

describe("the hidden history", () => {
  test("equals the enumeration of the joint of factors and levels", () => {
    fc.assert(
      fc.property(cases, ({ checks, priors, scale, chances, loadings, seen }) => {
        const index = compiled(checks, priors, scale, chances, loadings);
        const observed = checks.flatMap(({ id, levels }, at) =>
          seen[at] === undefined ? [] : [[id, { level: levels[seen[at]]!.id }] as const],
        );
        const { history, unseen } = inspect(STEEL_TOURER, {}, Object.fromEntries(observed), index);

        const small: SmallCheck[] = checks.map(({ id, ordered }, at) => ({
          id,
          ordered,
          prior: priors[at]!,
          shifts: loadings[at]!.map((one) => one * scale),
        }));
        const ranks = new Map(
          checks.flatMap(({ id }, at) => (seen[at] === undefined ? [] : [[id, seen[at]] as const])),
        );
        const expected = conditioned(chances, small, ranks);

        for (const [f, chance] of expected.factors.entries())
          expect(Math.abs(history.factors[FACTORS[f]!] - chance)).toBeLessThan(1e-12);
        for (const [z, chance] of expected.classes.entries()) {
          const weight = history.weights.reduce(
            (sum, one, at) => (at % expected.classes.length === z ? sum + one : sum),
            0,
          );
          expect(Math.abs(weight - chance)).toBeLessThan(1e-12);
        }
        for (const one of unseen) {
          const at = checks.findIndex(({ id }) => id === one.check);
          for (const [rank, chance] of expected.levels[at]!.entries())
            expect(Math.abs(one.probabilities[rank]! - chance)).toBeLessThan(1e-12);
        }
        expect(unseen.length + ranks.size).toBe(checks.length);
      }),
      { numRuns: 100, seed: 20261126 },
    );
  });

  test("gives each class chances of levels that sum to 1 and average to the prior", () => {
    fc.assert(
      fc.property(cases, ({ checks, priors, scale, chances, loadings }) => {
        const index = compiled(checks, priors, scale, chances, loadings);
        const { history, unseen } = inspect(STEEL_TOURER, {}, {}, index);
        expect(history.weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        for (const { byClass, prior } of unseen) {
          const levels = prior.length;
          for (const [rank, chance] of prior.entries()) {
            const average = history.weights.reduce((sum, w, z) => sum + w * byClass[z * levels + rank]!, 0);
            expect(Math.abs(average - chance)).toBeLessThan(1e-12);
          }
          for (let z = 0; z < 16; z++) {
            const row = byClass.subarray(z * levels, (z + 1) * levels);
            expect(Math.min(...row)).toBeGreaterThanOrEqual(0);
            expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          }
        }
      }),
    );
  });

  test("cannot be moved by a level that its prior rules out", () => {
    const priors = CHECKS.map(({ levels }) => levels.map((_, rank) => (rank < 2 ? 0.5 : 0)));
    const index = compiled(
      CHECKS,
      priors,
      2.5,
      [0.3, 0.4, 0.5, 0.1],
      CHECKS.map(() => [0.5, 0.5, 0.5, 0.5]),
    );
    const before = inspect(STEEL_TOURER, {}, {}, index);
    const after = inspect(STEEL_TOURER, {}, { fork: { level: "worst" } }, index);
    expect(after.history.weights).toEqual(before.history.weights);
  });

  test("settles where one level is certain", () => {
    const priors = CHECKS.map(({ levels }) => levels.map((_, rank) => (rank === 1 ? 1 : 0)));
    const index = compiled(
      CHECKS,
      priors,
      2.5,
      [0.3, 0.4, 0.5, 0.1],
      CHECKS.map(() => [0.5, 0.5, 0.5, 0.5]),
    );
    for (const { probabilities } of inspect(STEEL_TOURER, {}, {}, index).unseen)
      for (const [rank, chance] of probabilities.entries())
        expect(chance).toBeCloseTo(rank === 1 ? 1 : 0, 12);
  });
});
