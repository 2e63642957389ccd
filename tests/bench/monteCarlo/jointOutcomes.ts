import { addWork, NO_WORK, type Work } from "../../../worker/engine/decision/courseBranch.ts";
import type { Resource } from "../../../worker/engine/service/resource.ts";
import { goingOn, type Uncertainty, type Way } from "../../../worker/engine/service/uncertainty.ts";
import { bitsOf, type SharedBits } from "./sharedResources.ts";

/** One joint outcome of some uncertainties. Money and minutes are means at speed 1, beside the shared resources. */
export interface Joint {
  /** By class of history. */
  readonly chances: Float64Array;
  /** Where the work goes on; where the frame is ended, what was spent on that. */
  readonly money: number;
  readonly moneyVariance: number;
  readonly minutes: number;
  readonly minutesVariance: number;
  readonly told: number;
  /** Bits of the shared resources that it asks for. */
  readonly shared: number;
  readonly ends: boolean;
  /** What it adds to the opening work where the course is left or the frame is ended. */
  readonly early: Work;
}

const NOTHING: Omit<Joint, "chances"> = {
  money: 0,
  moneyVariance: 0,
  minutes: 0,
  minutesVariance: 0,
  told: 0,
  shared: 0,
  ends: false,
  early: NO_WORK,
};

/** Whether something of it is done, or spared, before anything is decided. */
export function isEarly({ ways }: Uncertainty): boolean {
  return ways.some(({ early: { money, minutes } }) => money.mean !== 0 || minutes.mean !== 0);
}

/** Each way of one uncertainty, and that nothing comes of it. */
export function outcomesOf(
  { ways }: Uncertainty,
  classes: number,
  bits: SharedBits,
  resources: readonly Resource[],
): readonly Joint[] {
  const left = new Float64Array(classes).fill(1);
  for (const { chances } of ways) for (let z = 0; z < classes; z++) left[z]! -= chances[z]!;
  return [
    { ...NOTHING, chances: left.map((one) => Math.max(0, one)) },
    ...ways.map((way) => outcomeOf(way, bits, resources)),
  ];
}

function outcomeOf(way: Way, bits: SharedBits, resources: readonly Resource[]): Joint {
  const { chances, told, endsFrame: ends, early } = way;
  let [money, moneyVariance] = [way.money.mean, way.money.variance];
  let [minutes, minutesVariance] = [way.minutes.mean, way.minutes.variance];
  for (const index of way.resources) {
    if (!bits.has(index)) continue;
    const shared = goingOn(resources[index]!);
    money -= shared.money.mean;
    moneyVariance -= shared.money.variance;
    minutes -= shared.minutes.mean;
    minutesVariance -= shared.minutes.variance;
  }
  return {
    chances,
    money,
    moneyVariance: Math.max(Math.min(0, way.money.variance), moneyVariance),
    minutes,
    minutesVariance: Math.max(Math.min(0, way.minutes.variance), minutesVariance),
    told,
    shared: bitsOf(way.resources, bits),
    ends,
    early,
  };
}

/** Outcomes of both. The first that ends the frame ends it: what the other would bring is not done. */
export function crossed(before: readonly Joint[], next: readonly Joint[]): Joint[] {
  return before.flatMap((one) => (one.ends ? [one] : next.map((other) => joined(one, other))));
}

function joined(one: Joint, other: Joint): Joint {
  const both = {
    chances: one.chances.map((chance, z) => chance * other.chances[z]!),
    early: addWork(one.early, other.early),
  };
  if (other.ends) return { ...other, ...both };
  return {
    ...both,
    money: one.money + other.money,
    moneyVariance: one.moneyVariance + other.moneyVariance,
    minutes: one.minutes + other.minutes,
    minutesVariance: one.minutesVariance + other.minutesVariance,
    told: one.told + other.told,
    shared: one.shared | other.shared,
    ends: false,
  };
}
