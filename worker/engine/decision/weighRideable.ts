import { allowanceFor } from "../service/allowance.ts";
import type { Fault } from "../service/fault.ts";
import { Ledger } from "../service/ledger.ts";
import { sum, times } from "../service/moments.ts";
import { planRideable } from "../service/rideablePlan.ts";
import { isOpening } from "../service/workingOrder.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import { changeOfCourse } from "./changeOfCourse.ts";
import { addWork, costOf, courseBranch, openCourse, titleBranches, type Work } from "./courseBranch.ts";
import { receivedShare } from "./pricing.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/**
 * Restoring or making safe. Beside the shown plan it carries the expected follow-up of operations that may fail and the allowance for the unseen;
 * with some chance the frame turns out to be finished, or a fault shows that is not worth curing: then the opening work is lost and the best of what is
 * left is done.
 */
export function weighRideable(course: "restore" | "make-safe", situation: Situation): WeighedCourse {
  if (situation.rideableClosedBecause !== null)
    return { course, open: false, because: situation.rideableClosedBecause };
  const { bench, book, pricing, settled, salvage } = situation;
  const ledger = new Ledger(bench, book.catalogue.defaults.delivery.orders[course]);
  const share = receivedShare(settled, book, "rideable");
  const stakes = pricing.stakes(
    situation.unworkedCondition,
    course === "restore",
    frameLoss(situation, share),
  );
  const planned = planRideable(course, ledger, stakes);
  if ("uncurable" in planned) return { course, open: false, because: nothingCures(planned.uncurable) };

  const { plan } = planned;
  const price = pricing.rideable(situation.unworkedCondition + plan.gain, {
    polished: plan.polishes,
    repainted: plan.repaints,
  });
  const change = changeOfCourse(situation);
  const opening = openingWork(plan);
  const goingOn = share * logNormalMean(price) - costOf(addWork(plan, plan.contingency), settled);
  const allowance = allowanceFor(plan, situation.inspection.unseen, situation.checks, ledger, {
    toldLoss: (penalty) => stakes.takings(plan.gain) - stakes.takings(plan.gain - penalty),
    changeAbove: Math.max(
      book.catalogue.defaults.changeFrom * logNormalMean(price),
      goingOn - (change.worth - costOf(opening, settled)),
    ),
  });
  const clear = 1 - plan.endsTitle;
  const unseenSound = 1 - allowance.condemned - allowance.changed;
  const condemned = allowance.condemned + unseenSound * plan.endsFrame;
  const salvaged = salvage.price ? { price: salvage.price, share: salvage.share } : null;
  const branches = [
    ...titleBranches(situation, plan),
    courseBranch(
      situation,
      clear * unseenSound * (1 - plan.endsFrame),
      { price, share },
      addWork(plan, plan.contingency, allowance),
    ),
    courseBranch(situation, clear * condemned, salvaged, addWork(opening, salvage)),
    courseBranch(situation, clear * allowance.changed, change.sale, addWork(opening, change.work)),
  ];
  return openCourse(situation, plan, branches, allowance);
}

/** What a lost frame costs: the sale of the finished bike, less what is salvaged. Used to weigh risky operations while planning. */
function frameLoss({ pricing, salvage }: Situation, share: number): number {
  const whole = share * logNormalMean(pricing.rideable(1, { polished: false, repainted: false }));
  const rest = salvage.price ? salvage.share * logNormalMean(salvage.price) : 0;
  return Math.max(0, whole - rest);
}

/** Work done before the frame is known to hold: papers, wash, and the operations that may end the job. */
function openingWork({ tasks }: WorkPlan): Work {
  const opening = tasks.filter(({ operation }) => isOpening(operation));
  const spent = opening.flatMap(({ purchases }) =>
    purchases.map(({ unitPrice, quantity }) => times(unitPrice, quantity)),
  );
  return { money: sum(...spent), minutes: sum(...opening.map(({ minutes }) => minutes)) };
}

function nothingCures({ check, level }: Fault): string {
  return `${check.name}: ${level.description}. Nothing in the catalogue cures that on this bike.`;
}
