import type { Money, Probability } from "../quantity.ts";
import { type Moments, NOTHING, sum } from "../service/moments.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { ScaledBeta } from "../statistics/scaledBeta.ts";
import type { Branch, Sale } from "./branch.ts";
import { expectationOf } from "./expectation.ts";
import { byLots } from "./lots.ts";
import type { SettledRequest } from "./settledRequest.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse } from "./weighedCourse.ts";

export interface Work {
  readonly money: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
}

export const NO_WORK: Work = { money: NOTHING, minutes: NOTHING };

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

/**
 * Money out beside work: purchase and travel where they lie ahead, fixed fee and packing where something is sold, less what parts bought for it are worth
 * unused (a plan that fits them pays that much for them).
 */
export function outlayBesideWork(situation: Situation, sells: boolean): Money {
  const { fee, packing, reuseWorth } = situation.settled;
  return stillAhead(situation).money - reuseWorth + (sells ? fee.fixed + packing : 0);
}

/**
 * What is sold and done with a chance: purchase and travel added where they lie ahead, fixed fee and packing where something is sold.
 * @param widest price of the work's that varies most
 */
export function courseBranches(
  situation: Situation,
  chance: Probability,
  sale: Sale | null,
  work: Work,
  widest: ScaledBeta | null = null,
): readonly Branch[] {
  const ahead = stillAhead(situation);
  const fixed = outlayBesideWork(situation, sale !== null);
  const branch: Branch = {
    chance,
    price: sale?.price ?? null,
    share: sale?.share ?? 0,
    outlay: {
      mean: work.money.mean + fixed,
      variance: work.money.variance,
      third: 0,
      ...(widest && { widest }),
    },
    minutes: work.minutes,
    covariance: 0,
    otherMinutes: ahead.minutes,
  };
  return byLots(branch, sale);
}

/** The number turns out to be reported after the bike was paid for: nothing may be sold. Empty where the papers are in order. */
export function titleBranches(situation: Situation, plan: WorkPlan): readonly Branch[] {
  if (plan.endsTitle === 0) return [];
  const asking = plan.tasks.filter(({ operation }) => operation.failure?.ends === "title");
  const minutes = sum(...asking.map((one) => one.minutes));
  return courseBranches(situation, plan.endsTitle, null, { money: NOTHING, minutes });
}

const NOTHING_UNFOLDS = { allowance: { money: 0, minutes: 0 }, rightToChange: 0, unknown: null };

export function openCourse(
  situation: Situation,
  plan: WorkPlan,
  branches: readonly Branch[],
  unfolding: Pick<OpenCourse, "allowance" | "rightToChange" | "unknown"> = NOTHING_UNFOLDS,
): OpenCourse {
  return {
    course: plan.course,
    open: true,
    plan,
    ...unfolding,
    branches,
    expected: expectationOf(branches, situation.settled.workshop),
    cashNeeded: stillAhead(situation).money + plan.cash.mean,
  };
}
