import type { Money, Probability } from "../quantity.ts";
import type { WholeState } from "../selling/demand/sellingTables.ts";
import type { CourseId } from "../service/operation.ts";
import type { GoingRate } from "../valuation/goingRate.ts";
import { predict } from "../valuation/prediction.ts";
import { atLevel } from "./pricing.ts";
import type { Situation } from "./situation.ts";
import { finishedSale } from "./stateValues.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/** The state in which each course sells the bike whole. */
export const STATE_OF: Readonly<Partial<Record<CourseId, WholeState>>> = {
  "sell-as-found": "asFound",
  "make-safe": "madeSafe",
  restore: "restored",
};

/** What buyers go by when a bike is sold whole. */
export interface SaleOutlook {
  /** Going rates, before haggling, of which the second holds with the chance: as found it may turn out to ride or not. */
  readonly one: GoingRate;
  readonly other: GoingRate;
  readonly chance: Probability;
  /** Share that is usually talked off. */
  readonly usualHaggling: Probability;
  /** What breaking it instead leaves after its minutes; null where there is nothing to break. */
  readonly parts: Money | null;
}

/** The outlook of a sale in a state that a course leads to; null where none makes the bike rideable. */
export function saleOutlook(
  state: WholeState,
  situation: Situation,
  courses: readonly WeighedCourse[],
): SaleOutlook | null {
  const { pricing, notRidingChance, settled, book } = situation;
  const { haggling } = book.catalogue.defaults;
  const parts = situation.partsClosedBecause === null ? brokenWorth(situation) : null;
  if (state === "asFound") {
    const { asFoundRiding: one, asFoundNotRiding: other } = pricing;
    return { one, other, chance: notRidingChance, usualHaggling: haggling.asFound, parts };
  }
  const sale = finishedSale(state === "madeSafe" ? "make-safe" : "restore", situation, courses);
  if (sale === null) return null;
  const rate = atLevel(predict(settled.market.belief, sale), settled.market.logPriceLevel);
  return { one: rate, other: rate, chance: 0, usualHaggling: haggling.rideable, parts };
}

/** Expected takings of the pieces worth listing, less the minutes to strip, list and post them at the user's goal. */
function brokenWorth({ parts, settled, fixedPlans }: Situation): Money {
  const { hourlyGoal, speedFactor } = settled.workshop;
  const { money, minutes } = fixedPlans["break-for-parts"];
  const costs = settled.fee.fixed + settled.packing + money.mean;
  return parts.list.takings - costs - (minutes.mean * speedFactor * hourlyGoal) / 60;
}
