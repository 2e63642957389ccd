import { curveOf } from "../selling/demand/goingRates.ts";
import { seasonsOf } from "../selling/demand/season.ts";
import { demandOf, expectedWeeks, usualFallback } from "../selling/demand/wholeSale.ts";
import type { CourseId } from "../service/operation.ts";
import { mixtureBand } from "../valuation/valueBand.ts";
import { STATE_OF, saleOutlook } from "./saleOutlook.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

const DAYS_A_WEEK = 7;

/**
 * Days from listing until the bike is gone on average, in whole days: sold whole, at the prices of its selling plan; its parts, as the table says. 0 for leave.
 */
export function daysToSell(
  course: CourseId,
  situation: Situation,
  courses: readonly WeighedCourse[],
): number {
  const { settled, book } = situation;
  const { selling, defaults } = book.catalogue;
  if (course === "leave") return 0;
  const state = STATE_OF[course];
  const outlook = state === undefined ? null : saleOutlook(state, situation, courses);
  if (state === undefined || outlook === null) return defaults.calendar.sellingDays;
  const { one, other, chance, usualHaggling, parts } = outlook;
  const weeks = expectedWeeks(
    {
      curves: [curveOf(one, 1 - chance), curveOf(other, chance)],
      usualHaggling,
      demand: demandOf(selling, settled.attributes, state),
      seasons: seasonsOf(selling, settled.market.belief),
      month: settled.month,
      priceLevel: settled.priceLevel,
      // Packing is paid at the sale as a fixed fee is.
      fee: { ...settled.fee, fixed: settled.fee.fixed + settled.packing },
      fallback: usualFallback(selling, usualHaggling, mixtureBand(one, other, chance).p50, parts).terms,
    },
    selling,
  );
  return Math.round(DAYS_A_WEEK * weeks);
}
