import type { Probability } from "../quantity.ts";
import type { Resource } from "../service/resource.ts";
import { NO_WAY, type Uncertainty, type Way } from "../service/uncertainty.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { addWork } from "./courseBranch.ts";
import { among, type Leaf, type Path, withWork } from "./discovery.ts";

/** What makes up this share of a margin's variance is no part of a smooth sum: each of its ways is a branch of its own. */
const SHARE = 0.1;
/** So many at most: their ways multiply. */
const MOST = 2;

/**
 * Uncertainties that nobody decides on and that would still show in the shape of the margin, since little else smooths it: where a bike sells for less than its
 * work costs, one bearing that will not come out makes two humps.
 * @param classes chance of each class of history
 * @param variance of the margin where the work goes on
 */
export function toldApart(
  rest: readonly Uncertainty[],
  classes: Float64Array,
  variance: number,
): readonly Uncertainty[] {
  const heavy: { readonly one: Uncertainty; readonly own: number }[] = [];
  for (const one of rest) {
    const own = spreadBetween(one.ways, classes);
    if (own > SHARE * variance && !one.ways.some(({ endsFrame }) => endsFrame)) heavy.push({ one, own });
  }
  return heavy
    .sort((a, b) => b.own - a.own)
    .slice(0, MOST)
    .map(({ one }) => one);
}

/** Variance of what the ways bring on average. */
function spreadBetween(ways: readonly Way[], classes: Float64Array): number {
  let mean = 0;
  let square = 0;
  for (const { chances, money, told } of ways) {
    let chance: Probability = 0;
    for (let z = 0; z < classes.length; z++) chance += classes[z]! * chances[z]!;
    mean += chance * (money.mean + told);
    square += chance * squared(money.mean + told);
  }
  return square - squared(mean);
}

/** Each leaf once for each way of what is told apart. */
export function splitBy(
  leaves: readonly Leaf[],
  apart: readonly Uncertainty[],
  resources: readonly Resource[],
): readonly Leaf[] {
  return apart.reduce((all, one) => all.flatMap((leaf) => split(leaf, one, resources)), leaves);
}

function split(leaf: Leaf, { ways }: Uncertainty, resources: readonly Resource[]): readonly Leaf[] {
  const left = leaf.mass.slice();
  const parts = ways.map((way): Leaf => {
    const mass = among(leaf.mass, way);
    for (let z = 0; z < left.length; z++) left[z] = Math.max(0, left[z]! - mass[z]!);
    return { ...leaf, mass, path: after(leaf.path, way, resources) };
  });
  return [...parts, { ...leaf, mass: left, path: after(leaf.path, { ...NO_WAY, chances: left }, resources) }];
}

/** What belongs to the opening work is spent wherever the work ends; the rest where it goes on. */
function after(path: Path, way: Way, resources: readonly Resource[]): Path {
  return { ...withWork(path, way, resources), spent: addWork(path.spent, way.early) };
}
