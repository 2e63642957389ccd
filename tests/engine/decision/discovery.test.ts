import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classSums } from "../../../worker/engine/decision/classSums.ts";
import { type DiscoveryStakes, unfold } from "../../../worker/engine/decision/discovery.ts";
import type { Uncertainty, Way } from "../../../worker/engine/service/uncertainty.ts";
import { RESOURCES, uncertainty } from "./madeUpUncertainties.ts";

const CLASSES = 3;

type Stakes = Omit<DiscoveryStakes, "resources" | "opened">;
interface Tree {
  readonly decided: readonly Uncertainty[];
  readonly rest: readonly Uncertainty[];
  readonly stakes: Stakes;
}

/** Something may be made of what is left at least as well as recycling it. */
const stakes: fc.Arbitrary<Stakes> = fc
  .record({
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
  .map(({ parts, salvage, ...told }) => {
    const whole = parts.reduce((sum, one) => sum + one, 0);
    const classes = Float64Array.from(parts, (one) => one / whole);
    return { ...told, classes, ended: told.abandoned + salvage };
  });

/** Three faults of up to `most` ways, and two that nobody decides on. */
const trees = (shares: boolean, most: readonly number[]): fc.Arbitrary<Tree> =>
  fc.record({
    decided: fc
      .tuple(...most.map((_, place) => uncertainty(`fault ${place}`, CLASSES, shares)))
      .map((all) => all.map((one, place) => ({ ...one, ways: one.ways.slice(0, most[place]) }))),
    rest: fc.tuple(uncertainty("rest 1", CLASSES, shares), uncertainty("rest 2", CLASSES, shares)),
    stakes,
  });

/** Where the course may be changed: after each way that brings work, whatever came before it but the end. */
function nodesOf({ decided, stakes: { minuteWorth } }: Tree): string[] {
  const nodes: string[] = [];
  let paths = [""];
  for (const { ways } of decided) {
    const going = ways.flatMap((way, index) => (way.endsFrame ? [] : [{ way, index }]));
    for (const path of paths)
      for (const { way, index } of going)
        if (way.money.mean + way.minutes.mean * minuteWorth > 0) nodes.push(`${path} ${index}`);
    paths = paths.flatMap((path) => [`${path} -`, ...going.map(({ index }) => `${path} ${index}`)]);
  }
  return nodes;
}

/** Each way or nothing, with its chance in a class. */
function turns(
  { ways }: Uncertainty,
  z: number,
): { readonly key: string; readonly chance: number; readonly way: Way | null }[] {
  const nothing = 1 - ways.reduce((sum, { chances }) => sum + chances[z]!, 0);
  return [
    { key: "-", chance: nothing, way: null },
    ...ways.map((way, index) => ({ key: `${index}`, chance: way.chances[z]!, way })),
  ];
}

/** Expected net benefit of a policy, every joint outcome of every class played out one by one. */
function worthOf(
  { decided, rest, stakes }: Tree,
  changedAt: ReadonlySet<string>,
  ended = stakes.ended,
): number {
  const { minuteWorth, going, changed, classes } = stakes;
  const time = (opened: ReadonlySet<number>) =>
    [...opened].reduce((sum, index) => sum + RESOURCES[index]!.minutes.mean, 0) * minuteWorth;
  const cost = (taken: readonly Way[]) => {
    const union = new Set(taken.flatMap(({ resources }) => resources));
    const shared = [...union].reduce(
      (sum, index) => sum + RESOURCES[index]!.money.mean + RESOURCES[index]!.minutes.mean * minuteWorth,
      0,
    );
    const own = taken
      .filter(({ resources }) => resources.length === 0)
      .reduce((sum, { money, minutes }) => sum + money.mean + minutes.mean * minuteWorth, 0);
    return shared + own + taken.reduce((sum, { told }) => sum + told, 0);
  };
  const spent = ({ money, minutes }: Way) => money.mean + minutes.mean * minuteWorth;
  const play = (
    place: number,
    path: string,
    z: number,
    taken: readonly Way[],
    opened: ReadonlySet<number>,
  ): number => {
    const next = decided[place];
    if (!next) return playRest(z, taken, opened);
    const apart = new Set([...opened, ...next.opening]);
    return turns(next, z).reduce((sum, { key, chance, way }) => {
      const here = `${path} ${key}`;
      // The level shows before its cure is tried, whatever that does to the frame.
      const before = way?.endsFrame ? next.ways[Number(key) - 1] : undefined;
      const shown = before && !before.endsFrame && before.rank === way!.rank;
      if (shown && changedAt.has(`${path} ${Number(key) - 1}`)) return sum + chance * (changed - time(apart));
      if (!way) return sum + chance * play(place + 1, here, z, taken, apart);
      if (way.endsFrame) return sum + chance * (ended - time(apart) - spent(way));
      if (changedAt.has(here)) return sum + chance * (changed - time(apart));
      return sum + chance * play(place + 1, here, z, [...taken, way], apart);
    }, 0);
  };
  const playRest = (z: number, taken: readonly Way[], opened: ReadonlySet<number>): number => {
    const [one, two] = rest;
    return turns(one!, z).reduce(
      (sum, first) =>
        sum +
        turns(two!, z).reduce((inner, second) => {
          const ways = [first.way, second.way].filter((way) => way !== null);
          const ending = ways.find(({ endsFrame }) => endsFrame);
          const worth = ending ? ended - time(opened) - spent(ending) : going - cost([...taken, ...ways]);
          return inner + first.chance * second.chance * worth;
        }, 0),
      0,
    );
  };
  return classes.reduce((sum, weight, z) => sum + weight * play(0, "", z, [], new Set()), 0);
}

function unfolded({ decided, rest, stakes: told }: Tree) {
  const asked = new Set(decided.flatMap(({ ways }) => ways.flatMap(({ resources }) => resources)));
  return unfold(decided, classSums(rest, asked, CLASSES, RESOURCES), {
    ...told,
    opened: new Set<number>(),
    resources: RESOURCES,
  });
}

/** One that nobody decides on ends the frame at most: two that may would both be paid for on average. */
function withOneEnd(tree: Tree): Tree {
  const [one, two] = tree.rest;
  const spared = { ...two!, ways: two!.ways.filter(({ endsFrame }) => !endsFrame) };
  return { ...tree, rest: [one!, spared] };
}

describe("the tree of what may show", () => {
  test.each([false, true])("is worth what the best of all policies is, resources shared: %s", (shares) => {
    fc.assert(
      fc.property(trees(shares, [2, 1, 1]).map(withOneEnd), (tree) => {
        const nodes = nodesOf(tree);
        let best = Number.NEGATIVE_INFINITY;
        for (let policy = 0; policy < 2 ** nodes.length; policy++)
          best = Math.max(best, worthOf(tree, new Set(nodes.filter((_, bit) => (policy >> bit) & 1))));
        expect(unfolded(tree).worth).toBeCloseTo(best, 9);
      }),
      { numRuns: 25 },
    );
  });

  test("the right to change is worth the difference to never changing and recycling a lost frame, and never below 0", () => {
    fc.assert(
      fc.property(trees(true, [3, 3, 3]).map(withOneEnd), (tree) => {
        const { worth, bound } = unfolded(tree);
        expect(bound).toBeCloseTo(worthOf(tree, new Set(), tree.stakes.abandoned), 9);
        expect(worth).toBeGreaterThanOrEqual(bound - 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  test("its leaves are everything that may come of it: their chances are those of the classes", () => {
    fc.assert(
      fc.property(trees(true, [3, 3, 3]), (tree) => {
        const { leaves } = unfolded(tree);
        for (let z = 0; z < CLASSES; z++)
          expect(leaves.reduce((sum, { mass }) => sum + mass[z]!, 0)).toBeCloseTo(
            tree.stakes.classes[z]!,
            12,
          );
      }),
      { numRuns: 100 },
    );
  });

  test("nothing is changed where changing never pays, and everything that brings work where it always does", () => {
    fc.assert(
      fc.property(trees(true, [3, 2, 2]).map(withOneEnd), (tree) => {
        const at = (changed: number) =>
          unfolded({ ...tree, stakes: { ...tree.stakes, changed } }).leaves.filter(
            ({ kind }) => kind === "changed",
          );
        expect(at(-1e6)).toEqual([]);
        const first = tree.decided[0]!;
        const brings = first.ways.filter(
          ({ endsFrame, money, minutes }) =>
            !endsFrame && money.mean + minutes.mean * tree.stakes.minuteWorth > 0,
        );
        expect(
          at(1e6).filter(({ path }) => path.ways.length === 1 && !first.ways[path.ways[0]!]!.endsFrame),
        ).toHaveLength(brings.length);
      }),
      { numRuns: 100 },
    );
  });
});
