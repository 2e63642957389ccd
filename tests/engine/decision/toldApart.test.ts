import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NO_WORK } from "../../../worker/engine/decision/courseBranch.ts";
import type { Leaf } from "../../../worker/engine/decision/discovery.ts";
import { splitBy, toldApart } from "../../../worker/engine/decision/toldApart.ts";
import { NO_WAY, type Uncertainty } from "../../../worker/engine/service/uncertainty.ts";
import { RESOURCES, uncertainty } from "./madeUpUncertainties.ts";

const CLASSES = Float64Array.of(0.2, 0.5, 0.3);
const LEAF: Leaf = {
  kind: "on",
  mass: CLASSES,
  path: { ways: [-1], work: NO_WORK, told: 0, used: new Set(), spent: NO_WORK, opened: new Set() },
};

const goingOn = (one: Uncertainty): Uncertainty => ({
  ...one,
  ways: one.ways.filter(({ endsFrame }) => !endsFrame),
});
const two = fc
  .tuple(uncertainty("a", CLASSES.length, true), uncertainty("b", CLASSES.length, true))
  .map((all) => all.map(goingOn));

/** Money and told of a set of ways, each resource paid once. */
function enumerated([one, other]: readonly Uncertainty[], z: number): number {
  const outcomes = ({ ways }: Uncertainty) => {
    const left = 1 - ways.reduce((sum, { chances }) => sum + chances[z]!, 0);
    return [
      ...ways.map((way) => [way.chances[z]!, way] as const),
      [left, { ...NO_WAY, chances: CLASSES }] as const,
    ];
  };
  let mean = 0;
  for (const [p, a] of outcomes(one!))
    for (const [q, b] of outcomes(other!)) {
      const used = new Set([...a.resources, ...b.resources]);
      const money = [...used].reduce((sum, index) => sum + RESOURCES[index]!.money.mean, 0);
      mean += p * q * (money + a.told + b.told);
    }
  return mean;
}

describe("what is told apart", () => {
  test("splits a leaf into its ways: every class keeps its chance, and work that both ask for is paid once", () => {
    fc.assert(
      fc.property(two, (apart) => {
        const leaves = splitBy([LEAF], apart, RESOURCES);
        for (let z = 0; z < CLASSES.length; z++) {
          const chance = leaves.reduce((sum, { mass }) => sum + mass[z]!, 0);
          expect(chance).toBeCloseTo(CLASSES[z]!, 12);
          const money = leaves.reduce(
            (sum, { mass, path }) => sum + mass[z]! * (path.work.money.mean + path.told),
            0,
          );
          expect(money).toBeCloseTo(CLASSES[z]! * enumerated(apart, z), 9);
        }
      }),
    );
  });

  test("is what would show: a tenth of the variance or more, and nothing that may end the frame", () => {
    const costing = (of: string, chance: number, mean: number, endsFrame = false): Uncertainty => ({
      of,
      job: null,
      resource: null,
      opening: [],
      ways: [
        { ...NO_WAY, chances: new Float64Array(3).fill(chance), money: { mean, variance: 0 }, endsFrame },
      ],
    });
    // Variances 75, 48 and 4.75.
    const all = [
      costing("bearing", 0.25, 20),
      costing("rim", 0.2, 10 * Math.sqrt(3)),
      costing("cable", 0.05, 10),
    ];
    const named = (variance: number) => toldApart(all, CLASSES, variance).map(({ of }) => of);
    expect(named(470)).toEqual(["bearing", "rim"]);
    expect(named(500)).toEqual(["bearing"]);
    expect(named(760)).toEqual([]);
    expect(toldApart([costing("crack", 0.25, 20, true)], CLASSES, 100)).toEqual([]);
  });

  test("tells what it adds to the opening work wherever the work ends", () => {
    const money = { mean: 12, variance: 1 };
    const early: Uncertainty = {
      of: "stem",
      job: null,
      resource: null,
      opening: [],
      ways: [{ ...NO_WAY, chances: new Float64Array(3).fill(0.5), money, early: { ...NO_WAY.early, money } }],
    };
    const leaves = splitBy([{ ...LEAF, kind: "changed" }], [early], RESOURCES);
    expect(leaves.map(({ path }) => path.spent.money.mean)).toEqual([12, 0]);
  });
});
