import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classSums } from "../../../../worker/engine/decision/classSums.ts";
import { type DiscoveryStakes, unfold } from "../../../../worker/engine/decision/discovery.ts";
import { knownWay, NOTHING_COMES } from "../../../../worker/engine/decision/looking/knownWay.ts";
import { restsOf, worthAfter } from "../../../../worker/engine/decision/looking/restWorth.ts";
import { sampleInformation } from "../../../../worker/engine/decision/looking/sampleInformation.ts";
import type { Unknown } from "../../../../worker/engine/decision/weighedCourse.ts";
import type { Uncertainty } from "../../../../worker/engine/service/uncertainty.ts";
import { updated } from "../../../../worker/engine/statistics/bayes.ts";
import { RESOURCES, uncertainty } from "../madeUpUncertainties.ts";
import { enumerated } from "./enumeratedCourse.ts";

const CLASSES = 3;

/** A made-up course of four checks that a hidden history links: two decided on as they show, one that may end the frame and one that does not. */
const courses: fc.Arbitrary<Unknown> = fc
  .record({
    decided: fc.tuple(uncertainty("first", CLASSES, false), uncertainty("second", CLASSES, false)),
    rest: fc.tuple(uncertainty("ending", CLASSES, false), uncertainty("going on", CLASSES, false)),
    parts: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), {
      minLength: CLASSES,
      maxLength: CLASSES,
    }),
    going: fc.double({ min: -50, max: 200, noNaN: true }),
    changed: fc.double({ min: -50, max: 150, noNaN: true }),
    abandoned: fc.double({ min: -60, max: 0, noNaN: true }),
    salvage: fc.double({ min: 0, max: 60, noNaN: true }),
    minuteWorth: fc.double({ min: 0, max: 0.4, noNaN: true }),
  })
  .map(({ decided: all, rest: last, parts, salvage, abandoned, ...told }) => {
    const decided = all.map(proportioned);
    const [ending, goingOn] = last.map(proportioned) as [Uncertainty, Uncertainty];
    const rest = [ending, { ...goingOn, ways: goingOn.ways.map((way) => ({ ...way, endsFrame: false })) }];
    const whole = parts.reduce((sum, one) => sum + one, 0);
    const stakes: DiscoveryStakes = {
      ...told,
      abandoned,
      ended: abandoned + salvage,
      classes: Float64Array.from(parts, (one) => one / whole),
      opened: new Set(),
      resources: RESOURCES,
    };
    const sums = classSums(rest, new Set(), CLASSES, RESOURCES);
    return {
      decided,
      rest,
      sums,
      stakes,
      leaves: unfold(decided, sums, stakes).leaves,
    } as unknown as Unknown;
  });

/** Ways of one level share its chance in the same proportion in every class, as those of a cure that may fail do. */
function proportioned(one: Uncertainty): Uncertainty {
  const ways = one.ways.map((way) => {
    const same = one.ways.filter(({ rank }) => rank === way.rank);
    const share = same[0] === way ? 0.7 : 0.3;
    if (same.length === 1) return way;
    return {
      ...way,
      chances: way.chances.map((_, z) => share * same.reduce((sum, { chances }) => sum + chances[z]!, 0)),
    };
  });
  return { ...one, ways };
}

/** The levels that an uncertainty may be at: the best, and those of its ways. */
function ranksOf({ ways }: Uncertainty): readonly number[] {
  return [...new Set([0, ...ways.map(({ rank }) => rank!)])];
}

/** Chance of a level in each class. */
function chancesAt({ ways }: Uncertainty, rank: number): Float64Array {
  const chances = new Float64Array(CLASSES).fill(rank === 0 ? 1 : 0);
  for (const way of ways)
    for (let z = 0; z < CLASSES; z++) {
      if (rank === 0) chances[z]! -= way.chances[z]!;
      else if (way.rank === rank) chances[z]! += way.chances[z]!;
    }
  return chances;
}

function worthAt(unknown: Unknown, one: Uncertainty, rank: number): { chance: number; worth: number | null } {
  const { chance, weights } = updated(unknown.stakes.classes, chancesAt(one, rank));
  const known = knownWay(one, rank, unknown.stakes.minuteWorth);
  return { chance, worth: known && worthAfter(restsOf(unknown).without([one]), known, weights) };
}

describe("four dependent checks against the enumeration of all their levels, discovery included", () => {
  test("with nothing known the leaves are worth what the tree is, and what enumeration says", () => {
    fc.assert(
      fc.property(courses, (unknown) => {
        const worth = worthAfter(restsOf(unknown).all, NOTHING_COMES, unknown.stakes.classes);
        expect(worth).toBeCloseTo(unfold(unknown.decided, unknown.sums, unknown.stakes).worth, 8);
        expect(worth).toBeCloseTo(enumerated(unknown, null).worth, 8);
      }),
      { numRuns: 200 },
    );
  });

  test("with one level known the course is worth what enumeration says, whichever check it is", () => {
    fc.assert(
      fc.property(courses, (unknown) => {
        for (const one of [...unknown.decided, ...unknown.rest])
          for (const rank of ranksOf(one)) {
            const { chance, worth } = worthAt(unknown, one, rank);
            // A level that ends the frame closes the course: nothing to compare.
            if (worth === null || chance < 1e-9) continue;
            const brute = enumerated(unknown, { one, rank });
            expect(chance).toBeCloseTo(brute.chance, 10);
            expect(worth).toBeCloseTo(brute.worth, 6);
          }
      }),
      { numRuns: 100 },
    );
  });

  test("the value of a look is the decision tree's: look, then go or take what is sure", () => {
    fc.assert(
      fc.property(courses, fc.double({ min: -50, max: 150, noNaN: true }), (unknown, sure) => {
        const [, , , one] = [...unknown.decided, ...unknown.rest];
        const now = worthAfter(restsOf(unknown).all, NOTHING_COMES, unknown.stakes.classes);
        const go = now >= sure;
        const answers = ranksOf(one!).map((rank) => {
          const { chance, worth } = worthAt(unknown, one!, rank);
          return { chance, chosen: Math.max(worth!, sure), kept: go ? worth! : sure };
        });
        const tree = ranksOf(one!).reduce((sum, rank) => {
          const { chance, worth } = enumerated(unknown, { one: one!, rank });
          return chance > 0 ? sum + chance * Math.max(worth, sure) : sum;
        }, 0);
        expect(sampleInformation(answers)).toBeCloseTo(
          tree - Math.max(enumerated(unknown, null).worth, sure),
          6,
        );
      }),
      { numRuns: 100 },
    );
  });
});
