import type { Minutes, Money, Probability } from "../quantity.ts";
import { type Moments, NOTHING, sum, withChance } from "./moments.ts";
import type { Operation } from "./operation.ts";
import type { Resource } from "./resource.ts";

/** One way in which something that is not known when a plan is made may turn out. */
export interface Way {
  /** Level of the check by which it comes; null for a job that fails. */
  readonly rank: number | null;
  /** Its chance in each class of history. */
  readonly chances: Float64Array;
  /** The frame is finished: nothing but salvage is left. */
  readonly endsFrame: boolean;
  /** Work beyond the plan; where the frame is finished, what was spent on it by then. At speed 1. */
  readonly money: Moments;
  readonly minutes: Moments;
  /** What is taken off the takings where the fault is told to the buyer. */
  readonly told: Money;
  /** What is told takes so much off visible condition. */
  readonly penalty: Probability;
  /** Resources beyond the plan that it asks for; another may ask for them too, and they are paid once. */
  readonly resources: readonly number[];
  /** Resources of the plan that what follows a failed job takes there and then. */
  readonly takes: readonly number[];
  /** Resources of the plan that are not needed after all, since the assumed fault is absent. */
  readonly spares: readonly number[];
  /** What of it belongs to the opening work: what follows where an opening job fails; below nought, what is spared of it. */
  readonly early: { readonly money: Moments; readonly minutes: Moments };
}

/** A way that brings nothing, for others to differ from. */
export const NO_WAY: Omit<Way, "chances"> = {
  rank: null,
  endsFrame: false,
  money: NOTHING,
  minutes: NOTHING,
  told: 0,
  penalty: 0,
  resources: [],
  takes: [],
  spares: [],
  early: { money: NOTHING, minutes: NOTHING },
};

/**
 * Something that is not known when a plan is made: a check not looked at, or a job of the plan that may fail. Its ways exclude each other; what is left of
 * their chances is that nothing comes of it. In a given class of history uncertainties are independent.
 */
export interface Uncertainty {
  /** Id of the check, or of the operation. */
  readonly of: string;
  /** From best to worst where the check is ordered. */
  readonly ways: readonly Way[];
  /** What of the plan is used before it shows, by resource: dismantling steps; what a job takes beside itself. */
  readonly opening: readonly number[];
  /** The job itself, done before its failure shows; null for a check. */
  readonly job: Operation | null;
  /** The job's resource; null for a check. */
  readonly resource: number | null;
  /** Minutes beside the plan's where nothing comes of it; none where left out. */
  readonly otherwise?: Moments;
}

/** What a resource costs where the work goes on, with what follows a failure that the frame survives. */
export interface GoingOn {
  readonly money: Moments;
  readonly minutes: Moments;
  /** Chance that it ends the frame instead. */
  readonly ends: Probability;
}

/** Costs of a resource given that it does not end the frame. */
export function goingOn({ money, minutes, failure }: Resource): GoingOn {
  if (failure === null) return { money, minutes, ends: 0 };
  const ends = failure.chance * failure.endsFrame;
  if (ends === 1) return { money, minutes, ends };
  const followed = (failure.chance * (1 - failure.endsFrame)) / (1 - ends);
  return {
    money: sum(money, withChance(failure.money, followed)),
    minutes: sum(minutes, withChance(failure.minutes, followed)),
    ends,
  };
}

/** What was spent on work that ended the frame: the jobs that may end it, and what followed their failure until then. */
export function spentUntilEnd(resources: readonly Resource[]): { money: Moments; minutes: Moments } {
  let chance = 0;
  let money = 0;
  let minutes = 0;
  for (const { failure, money: own, minutes: taken } of resources) {
    if (failure === null) continue;
    const ends = failure.chance * failure.endsFrame;
    chance += ends;
    money += ends * (own.mean + failure.untilEnd.money);
    minutes += ends * (taken.mean + failure.untilEnd.minutes);
  }
  return {
    money: { mean: chance > 0 ? money / chance : 0, variance: 0 },
    minutes: { mean: chance > 0 ? minutes / chance : 0, variance: 0 },
  };
}

/** Expected money and minutes at speed 1 of resources, each once. */
export function usedWork(
  used: ReadonlySet<number>,
  resources: readonly Resource[],
): { readonly money: Money; readonly minutes: Minutes } {
  let money = 0;
  let minutes = 0;
  for (const index of used) {
    money += resources[index]!.money.mean;
    minutes += resources[index]!.minutes.mean;
  }
  return { money, minutes };
}
