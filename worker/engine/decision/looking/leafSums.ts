import { type DiscoveryStakes, spentWorth, worthOf } from "../discovery.ts";
import type { Unknown } from "../weighedCourse.ts";

/**
 * The leaves of a discovery tree summed class by class, each with its chance in the class; what is done at each discovery stays as it was decided. In a
 * class the worth of the course is `through` x what is left after the rest, and `aside`.
 */
export interface LeafSums {
  /** Chance that the work is carried through, as far as the decided uncertainties go. */
  readonly through: Float64Array;
  /** Takings less plan and decided work there, times that chance; what the rest would ask for again given back. */
  readonly going: Float64Array;
  /** Spent by then where the frame still ends, times that chance. */
  readonly spent: Float64Array;
  /** Worth of the leaves where the course is changed or the frame ended, times their chances. */
  readonly aside: Float64Array;
}

/**
 * @param apart places among the decided of those that are known, and taken to bring nothing here
 */
export function leafSums({ leaves, sums, stakes, decided }: Unknown, apart: readonly number[]): LeafSums {
  const { classes } = stakes;
  const zeros = () => new Float64Array(classes.length);
  const total: LeafSums = { through: zeros(), going: zeros(), spent: zeros(), aside: zeros() };
  /** Of one leaf, in each class. */
  const shares = zeros();
  const nothing = apart.map((place) => chanceOfNothing(decided[place]!.ways, classes.length));
  for (const { kind, mass, path } of leaves) {
    if (apart.some((place) => (path.ways[place] ?? -1) !== -1)) continue;
    // A leaf that never came to turn on a known one stands whatever that brings.
    const given = nothing.filter((_, at) => path.ways.length > apart[at]!);
    const lost = spentWorth(path, stakes);
    const worth = kind === "on" ? goingOn(path, stakes) : stakes[kind] - lost;
    for (let z = 0; z < shares.length; z++) shares[z] = mass[z]! / classes[z]!;
    for (const chances of given)
      for (let z = 0; z < shares.length; z++) shares[z]! /= Math.max(chances[z]!, LEAST);
    if (kind !== "on") {
      for (let z = 0; z < shares.length; z++) total.aside[z]! += shares[z]! * worth;
      continue;
    }
    for (let z = 0; z < shares.length; z++) {
      total.through[z]! += shares[z]!;
      total.spent[z]! += shares[z]! * lost;
      total.going[z]! += shares[z]! * (worth + askedTwice(path.used, sums, z, stakes));
    }
  }
  return total;
}

/** Nothing may be divided by a chance smaller than this. */
const LEAST = 1e-9;

function goingOn({ told, work }: Unknown["leaves"][number]["path"], stakes: DiscoveryStakes): number {
  return stakes.going - told - worthOf(work.money, work.minutes, stakes);
}

/** What the sums of the rest count for resources that the path has paid for already. */
export function askedTwice(
  used: ReadonlySet<number>,
  { shared }: Unknown["sums"],
  z: number,
  { minuteWorth }: DiscoveryStakes,
): number {
  let worth = 0;
  if (used.size > 0)
    for (const { index, asked, money, minutes } of shared)
      if (used.has(index)) worth += asked[z]! * (money + minutes * minuteWorth);
  return worth;
}

function chanceOfNothing(ways: Unknown["decided"][number]["ways"], classes: number): Float64Array {
  const chances = new Float64Array(classes).fill(1);
  for (const way of ways) for (let z = 0; z < classes; z++) chances[z]! -= way.chances[z]!;
  return chances;
}
