import type { Money, Probability } from "../../quantity.ts";
import { logNormalMean } from "../../statistics/logNormal.ts";
import { receivedShare } from "../pricing.ts";
import type { Situation } from "../situation.ts";
import type { OpenCourse } from "../weighedCourse.ts";

/** Net benefit of selling as found, were the chance that it rides another: the takings alone change. */
export function soldRiding(
  { expected, plan }: OpenCourse,
  ridingChance: Probability,
  { pricing, settled, book, notRidingChance }: Situation,
): Money {
  const riding = logNormalMean(pricing.asFoundRiding);
  const not = logNormalMean(pricing.asFoundNotRiding);
  const share = receivedShare(settled, book, "asFound") * (1 - plan.endsTitle);
  return expected.netBenefit + share * (riding - not) * (ridingChance - (1 - notRidingChance));
}
