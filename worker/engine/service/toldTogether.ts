import type { Money, Probability } from "../quantity.ts";
import type { Uncertainty, Way } from "./uncertainty.ts";

/** Penalties are added up in these parts of full condition, so that sums of them meet. */
const PARTS = 1000;

/**
 * What is told of several faults takes off the price what their penalties take off together, which is not the sum of what each takes alone: the price is no
 * straight line over condition, and level where nothing is left of it. All of it is told alike by one factor, so that on average it is the loss of the sum,
 * each fault taken on its own.
 * @param classes chance of each class of history
 * @param toldLoss what a penalty takes off the takings
 */
export function toldTogether(
  all: readonly Uncertainty[],
  classes: Float64Array,
  toldLoss: (penalty: Probability) => Money,
): readonly Uncertainty[] {
  const telling = all.filter(({ ways }) => ways.some(({ told }) => told > 0));
  if (telling.length < 2) return all;
  let apart = 0;
  let sums = new Map<number, Probability>([[0, 1]]);
  for (const { ways } of telling) {
    const next = new Map<number, Probability>();
    const add = (penalty: number, chance: Probability) =>
      next.set(penalty, (next.get(penalty) ?? 0) + chance);
    let none = 1;
    for (const way of ways) {
      if (way.told === 0) continue;
      const chance = chanceOf(way, classes);
      apart += chance * way.told;
      none -= chance;
      const penalty = Math.round(way.penalty * PARTS);
      for (const [before, share] of sums) add(before + penalty, share * chance);
    }
    for (const [before, share] of sums) add(before, share * none);
    sums = next;
  }
  if (apart === 0) return all;
  let together = 0;
  for (const [penalty, chance] of sums) together += chance * toldLoss(penalty / PARTS);
  const factor = together / apart;
  return all.map((one) =>
    telling.includes(one)
      ? { ...one, ways: one.ways.map((way) => ({ ...way, told: way.told * factor })) }
      : one,
  );
}

function chanceOf({ chances }: Way, classes: Float64Array): Probability {
  return classes.reduce((sum, one, z) => sum + one * chances[z]!, 0);
}
