import type { Minutes, Money, Probability } from "../quantity.ts";
import type { FollowingJob } from "./failure.ts";
import type { Ledger } from "./ledger.ts";
import { type Moments, NOTHING, sum } from "./moments.ts";
import type { Resource } from "./resource.ts";
import { type GoingOn, goingOn } from "./uncertainty.ts";
import type { WorkPlan } from "./workPlan.ts";

/** What follows a failed job beyond a plan: what the plan does, takes apart or has at hand in any case is not paid for again. */
export interface FollowingWork {
  readonly resources: readonly number[];
  /** What of the plan it takes. */
  readonly takes: readonly number[];
  readonly money: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
  /** Chance that it ends the frame. */
  readonly endsFrame: Probability;
  /** Expected spending by the time that it ends the frame. */
  readonly untilEnd: { readonly money: Money; readonly minutes: Minutes };
  /** What of the plan is taken by then. */
  readonly takesUntilEnd: readonly number[];
}

/**
 * What follows may fail in its turn, but what would follow that is not counted (see failuresOf).
 * @param next jobs in the order in which they are done; where one ends the frame the others are not
 */
export function followingWork(next: readonly FollowingJob[], plan: WorkPlan, ledger: Ledger): FollowingWork {
  const used = new Set<number>();
  const takes = new Set<number>();
  const spent = { money: 0, minutes: 0 };
  let money = NOTHING;
  let minutes = NOTHING;
  let survives = 1;
  let takesUntilEnd: readonly number[] = [];
  for (const { operation, place } of next) {
    let ends = 0;
    for (const index of ledger.forOperation(operation, place).resources) {
      if (plan.resources.has(index)) takes.add(index);
      if (plan.resources.has(index) || used.has(index)) continue;
      used.add(index);
      const cost = unfollowed(ledger.resources[index]!);
      money = sum(money, cost.money);
      minutes = sum(minutes, cost.minutes);
      ends = 1 - (1 - ends) * (1 - cost.ends);
    }
    spent.money += survives * ends * money.mean;
    spent.minutes += survives * ends * minutes.mean;
    survives *= 1 - ends;
    if (ends > 0) takesUntilEnd = [...takes];
  }
  const endsFrame = 1 - survives;
  const untilEnd =
    endsFrame > 0
      ? { money: spent.money / endsFrame, minutes: spent.minutes / endsFrame }
      : { money: 0, minutes: 0 };
  return { resources: [...used], takes: [...takes], money, minutes, endsFrame, untilEnd, takesUntilEnd };
}

/** Costs of a resource whose own failure is followed by nothing more than its further minutes. */
function unfollowed(resource: Resource): GoingOn {
  const { money, minutes, failure } = resource;
  return failure !== null && failure.next.length > 0 ? { money, minutes, ends: 0 } : goingOn(resource);
}
