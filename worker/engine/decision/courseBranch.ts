import type { Money, Probability } from "../quantity.ts";
import type { Allowance } from "../service/allowance.ts";
import { type Moments, NOTHING, sum } from "../service/moments.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import type { Branch } from "./branch.ts";
import { expectationOf } from "./expectation.ts";
import type { SettledRequest } from "./settledRequest.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse } from "./weighedCourse.ts";

export interface Work {
  readonly money: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
}

export const NO_WORK: Work = { money: NOTHING, minutes: NOTHING };
export const NO_ALLOWANCE: Allowance = { ...NO_WORK, condemned: 0, changed: 0 };

export function addWork(...works: readonly Work[]): Work {
  return {
    money: sum(...works.map(({ money }) => money)),
    minutes: sum(...works.map(({ minutes }) => minutes)),
  };
}

/** Money and the time's worth at the user's goal. */
export function costOf(work: Work, { workshop }: SettledRequest): Money {
  return work.money.mean + (work.minutes.mean * workshop.speedFactor * workshop.hourlyGoal) / 60;
}

/** What is still to be paid and driven before the bike is in the workshop; nothing once it is paid for. */
export function stillAhead({ settled: { purchase } }: Situation): { money: number; minutes: number } {
  return purchase.paid
    ? { money: 0, minutes: 0 }
    : { money: purchase.price + purchase.travelCost, minutes: purchase.travelMinutes };
}

/** A branch: purchase and travel added where they lie ahead, fixed fee and packing where something is sold. */
export function courseBranch(
  situation: Situation,
  chance: Probability,
  sale: { price: LogNormal; share: number } | null,
  work: Work,
): Branch {
  const ahead = stillAhead(situation);
  const { fee, packing } = situation.settled;
  const fixed = ahead.money + (sale ? fee.fixed + packing : 0);
  return {
    chance,
    price: sale?.price ?? null,
    share: sale?.share ?? 0,
    outlay: sum(work.money, { mean: fixed, variance: 0 }),
    minutes: work.minutes,
    otherMinutes: ahead.minutes,
  };
}

/** The number turns out to be reported after the bike was paid for: nothing may be sold. Empty where the papers are in order. */
export function titleBranches(situation: Situation, plan: WorkPlan): readonly Branch[] {
  if (plan.endsTitle === 0) return [];
  const asking = plan.tasks.filter(({ operation }) => operation.failure?.ends === "title");
  return [
    courseBranch(situation, plan.endsTitle, null, {
      money: NOTHING,
      minutes: sum(...asking.map(({ minutes }) => minutes)),
    }),
  ];
}

export function openCourse(
  situation: Situation,
  plan: WorkPlan,
  branches: readonly Branch[],
  allowance = NO_ALLOWANCE,
): OpenCourse {
  return {
    course: plan.course,
    open: true,
    plan,
    allowance,
    branches,
    expected: expectationOf(branches, situation.settled.workshop),
    cashNeeded: stillAhead(situation).money + plan.money.mean,
  };
}
