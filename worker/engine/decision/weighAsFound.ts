import { courseBranches, openCourse, titleBranches } from "./courseBranch.ts";
import { receivedShare } from "./pricing.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/**
 * Selling as found, with every known fault told. A bike with a known blocking fault sells as one that does not ride; with none known, as a mixture
 * by the chance that an unseen one stands.
 */
export function weighAsFound(situation: Situation): WeighedCourse {
  const course = "sell-as-found";
  if (situation.wholeSaleClosedBecause !== null)
    return { course, open: false, because: situation.wholeSaleClosedBecause };
  const { pricing, book, settled, notRidingChance } = situation;
  const plan = situation.fixedPlans[course];
  const share = receivedShare(settled, book, "asFound");
  const clear = 1 - plan.endsTitle;
  return openCourse(situation, plan, [
    ...titleBranches(situation, plan),
    ...courseBranches(
      situation,
      clear * (1 - notRidingChance),
      { price: pricing.asFoundRiding, share },
      plan,
    ),
    ...courseBranches(situation, clear * notRidingChance, { price: pricing.asFoundNotRiding, share }, plan),
  ]);
}
