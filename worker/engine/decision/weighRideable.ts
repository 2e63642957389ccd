import { allowanceFor } from "../service/allowance.ts";
import type { Fault } from "../service/fault.ts";
import { sum, times } from "../service/moments.ts";
import type { CourseId } from "../service/operation.ts";
import { planRideable } from "../service/rideablePlan.ts";
import type { Stakes } from "../service/stakes.ts";
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
  const { book, pricing, settled, salvage } = situation;
  const ledger = situation.ledger.withOrders(book.catalogue.defaults.delivery.orders[course]);
  const share = receivedShare(settled, book, "rideable");
  const stakes = stakesOf(course, situation, share);
  const planned = planRideable(course, ledger, stakes);
  if ("uncurable" in planned) return { course, open: false, because: nothingCures(planned.uncurable) };

  const { plan } = planned;
  const price = pricing.rideable(situation.unworkedCondition + plan.gain, {
    polished: plan.polishes,
    repainted: plan.repaints,
  });
  const sale = stakes.sale(plan.repaints);
  const change = changeOfCourse(situation);
  const opening = openingWork(plan);
  const goingOn =
    share * logNormalMean(price) -
    settled.fee.fixed -
    settled.packing -
    costOf(addWork(plan, plan.contingency), settled);
  const allowance = allowanceFor(plan, situation.inspection.unseen, situation.checks, ledger, {
    toldLoss: (penalty) => sale.takings(plan.gain) - sale.takings(plan.gain - penalty),
    changeAbove: goingOn - (change.worth - costOf(opening, settled)),
    frameLoss: Math.max(0, goingOn - (stakes.salvage - costOf(opening, settled))),
  });
  const clear = 1 - plan.endsTitle;
  const unseenSound = 1 - allowance.condemned - allowance.changed;
  const condemned = allowance.condemned + unseenSound * plan.endsFrame;
  const branches = [
    ...titleBranches(situation, plan),
    courseBranch(
      situation,
      clear * unseenSound * (1 - plan.endsFrame),
      { price, share },
      addWork(plan, plan.contingency, allowance),
    ),
    courseBranch(situation, clear * condemned, salvage.sale, addWork(opening, salvage)),
    courseBranch(situation, clear * allowance.changed, change.sale, addWork(opening, change.work)),
  ];
  return openCourse(situation, plan, branches, allowance);
}

/** What the planner weighs: takings over condition in the finish that the course gives, and what a lost frame leaves. */
function stakesOf(
  course: CourseId,
  { pricing, salvage, settled, unworkedCondition }: Situation,
  share: number,
): Stakes {
  const fixed = settled.fee.fixed + settled.packing;
  const salvaged = salvage.sale ? salvage.sale.share * logNormalMean(salvage.sale.price) - fixed : 0;
  const saleIn = (repainted: boolean) => {
    const curve = pricing.curve({ polished: course === "restore", repainted });
    return {
      takings: (gain: number) => share * curve.mean(unworkedCondition + gain) - fixed,
      largestMarginal: (penalty: number) => share * curve.largestRise(penalty),
    };
  };
  const original = saleIn(false);
  let painted: typeof original | null = null;
  return {
    sale: (repainted) => {
      if (!repainted) return original;
      painted ??= saleIn(true);
      return painted;
    },
    salvage: salvaged - costOf(salvage, settled),
    notPolished: pricing.notPolished,
  };
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
