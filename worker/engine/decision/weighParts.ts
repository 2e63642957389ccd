import { courseBranch, openCourse, titleBranches } from "./courseBranch.ts";
import { partsShare } from "./pricing.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/** Breaking for parts: the frame sells too unless a finding, or an unseen fault, condemns it. */
export function weighParts(situation: Situation): WeighedCourse {
  if (situation.partsClosedBecause !== null)
    return { course: "break-for-parts", open: false, because: situation.partsClosedBecause };
  const { pricing, book, settled, frameUnsaleableChance, spoiledShare } = situation;
  const plan = situation.fixedPlans["break-for-parts"];
  const share = partsShare(settled, book);
  const clear = 1 - plan.endsTitle;
  const sold = (unsaleable: boolean) => ({ price: pricing.parts(unsaleable, spoiledShare), share });
  return openCourse(situation, plan, [
    ...titleBranches(situation, plan),
    courseBranch(situation, clear * (1 - frameUnsaleableChance), sold(false), plan),
    courseBranch(situation, clear * frameUnsaleableChance, sold(true), plan),
  ]);
}
