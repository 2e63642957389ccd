import { planFixed, planNothing } from "../service/fixedPlan.ts";
import { Ledger } from "../service/ledger.ts";
import type { Branch } from "./branch.ts";
import { openCourse } from "./courseBranch.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse } from "./weighedCourse.ts";

/** Leaving it: nothing while it is not paid for, a trip to be recycled once it is. */
export function weighLeave(situation: Situation): OpenCourse {
  const ledger = new Ledger(situation.bench, 0);
  const plan = situation.settled.purchase.paid ? planFixed("leave", ledger) : planNothing(ledger);
  const only: Branch = {
    chance: 1,
    price: null,
    share: 0,
    outlay: plan.money,
    minutes: plan.minutes,
    otherMinutes: 0,
  };
  return { ...openCourse(situation, plan, [only]), cashNeeded: plan.money.mean };
}
