import { widestPrice } from "../service/widestPrice.ts";
import { courseBranches, openCourse, titleBranches } from "./courseBranch.ts";
import { partsSale, whenFrameLost, whenFrameSells } from "./partsSale.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/** Breaking for parts: the pieces of the list, the frame among them where it pays unless a finding, or an unseen fault, condemns it. */
export function weighParts(situation: Situation): WeighedCourse {
  if (situation.partsClosedBecause !== null)
    return { course: "break-for-parts", open: false, because: situation.partsClosedBecause };
  const { pricing, parts, frameUnsaleableChance: lost } = situation;
  const plan = situation.fixedPlans["break-for-parts"];
  const widest = widestPrice(plan.tasks, situation.ledger);
  const clear = 1 - plan.endsTitle;
  const sells = partsSale(whenFrameSells(parts.list, lost), pricing);
  const gone = partsSale(whenFrameLost(parts.list), pricing);
  return openCourse(situation, plan, [
    ...titleBranches(situation, plan),
    ...courseBranches(situation, clear * (1 - lost), sells, plan, widest),
    ...courseBranches(situation, clear * lost, gone, plan, widest),
  ]);
}
