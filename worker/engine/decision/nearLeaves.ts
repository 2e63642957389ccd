import type { Probability } from "../quantity.ts";
import { hypot } from "../statistics/elementary/powers.ts";
import { logNormalSd } from "../statistics/logNormal.ts";
import type { Leaf } from "./discovery.ts";
import type { RideableSetting } from "./rideableSetting.ts";

/**
 * Leaves nearer than this, in standard deviations of what smooths them, become one branch: a mixture of two so near differs from one distribution of the same
 * three moments by less than a thousandth of probability.
 */
export const NEAR = 0.5;
/** A leaf less likely than this goes with its neighbour, however far. */
const SELDOM: Probability = 0.001;

/** Leaves in groups that price and pace smooth into one. */
export function nearLeaves(
  leaves: readonly Leaf[],
  { sale, plan, rest, situation }: RideableSetting,
): readonly (readonly Leaf[])[] {
  const scatter = plan.money.variance + Math.max(...rest.variance);
  const moneySd = hypot(sale.share * logNormalSd(sale.price), Math.sqrt(scatter));
  const minutesSd = situation.settled.workshop.speedSpread * plan.minutes.mean;
  const amount = ({ path }: Leaf) => path.work.money.mean + path.told;
  const near = (a: Leaf, b: Leaf) =>
    Math.abs(amount(a) - amount(b)) <= NEAR * moneySd &&
    Math.abs(a.path.work.minutes.mean - b.path.work.minutes.mean) <= NEAR * minutesSd;
  const groups: Leaf[][] = [];
  // The likeliest first: it gathers its neighbours.
  const rising = [...leaves].sort((a, b) => chanceOf(b.mass) - chanceOf(a.mass));
  for (const leaf of rising) {
    const group =
      groups.find(([first]) => near(first!, leaf)) ?? (chanceOf(leaf.mass) < SELDOM ? groups[0] : undefined);
    if (group) group.push(leaf);
    else groups.push([leaf]);
  }
  return groups;
}

/** Chance of a leaf, all classes together. */
export function chanceOf(mass: Float64Array): Probability {
  return mass.reduce((sum, one) => sum + one, 0);
}
