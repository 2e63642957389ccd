import { planNothing } from "../service/fixedPlan.ts";
import type { Branch } from "./branch.ts";
import { openCourse } from "./courseBranch.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse } from "./weighedCourse.ts";

/** Leaving it: nothing while it is not paid for, a trip to be recycled once it is. */
export function weighLeave(situation: Situation): OpenCourse {
  const plan = situation.settled.purchase.paid ? situation.fixedPlans.leave : planNothing(situation.ledger);
  const only: Branch = {
    chance: 1,
    price: null,
    share: 0,
    outlay: {
      mean: plan.money.mean - situation.settled.reuseWorth,
      variance: plan.money.variance,
      third: 0,
    },
    minutes: plan.minutes,
    covariance: 0,
    otherMinutes: 0,
  };
  return { ...openCourse(situation, plan, [only]), cashNeeded: plan.cash.mean };
}
