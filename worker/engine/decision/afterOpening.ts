import { NOTHING, sum, times } from "../service/moments.ts";
import { isOpening } from "../service/workingOrder.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { Work } from "./courseBranch.ts";

/** What is left to do of a plan once the opening work is done: papers asked for and photographs taken are not taken again. */
export function afterOpening({ tasks }: WorkPlan): Work {
  const left = tasks.filter(({ operation }) => !isOpening(operation));
  const bought = left.flatMap(({ purchases }) =>
    purchases.map(({ unitPrice, quantity }) => times(unitPrice, quantity)),
  );
  return { money: sum(NOTHING, ...bought), minutes: sum(NOTHING, ...left.map(({ minutes }) => minutes)) };
}
