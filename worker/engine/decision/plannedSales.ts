import type { LikePath } from "../selling/demand/bestPath.ts";
import { curveOf } from "../selling/demand/goingRates.ts";
import { seasonsOf } from "../selling/demand/season.ts";
import { demandOf, type ExpectedSale, expectedSale, usualFallback } from "../selling/demand/wholeSale.ts";
import type { CourseId } from "../service/operation.ts";
import { mixtureBand } from "../valuation/valueBand.ts";
import { STATE_OF, saleOutlook } from "./saleOutlook.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

const DAYS_A_WEEK = 7;

/** What comes of the sale of each course by its selling plan; null where it is closed, or does not sell the bike whole. */
export function plannedSales(
  situation: Situation,
  courses: readonly WeighedCourse[],
): readonly (ExpectedSale | null)[] {
  const { settled, book } = situation;
  const { selling } = book.catalogue;
  const seasons = seasonsOf(selling, settled.market.belief);
  let like: LikePath | null = null;
  return courses.map(({ course, open }) => {
    const state = STATE_OF[course];
    const outlook = state === undefined || !open ? null : saleOutlook(state, situation, courses);
    if (state === undefined || outlook === null) return null;
    const { one, other, chance, usualHaggling, parts } = outlook;
    const planned = expectedSale(
      {
        curves: [curveOf(one, 1 - chance), curveOf(other, chance)],
        usualHaggling,
        demand: demandOf(selling, settled.attributes, state),
        seasons,
        month: settled.month,
        priceLevel: settled.priceLevel,
        // Packing is paid at the sale as a fixed fee is.
        fee: { ...settled.fee, fixed: settled.fee.fixed + settled.packing },
        fallback: usualFallback(selling, usualHaggling, mixtureBand(one, other, chance).p50, parts).terms,
      },
      selling,
      // As found it has other buyers, and prices that come down otherwise.
      state === "asFound" ? null : like,
    );
    like = planned.like;
    return planned.sale;
  });
}

/** Days from listing until it is gone on average, in whole days: as its selling plan has it; its parts, as the table says; 0 for leave. */
export function daysToSell(course: CourseId, sale: ExpectedSale | null, { book }: Situation): number {
  if (course === "leave") return 0;
  return sale === null ? book.catalogue.defaults.calendar.sellingDays : Math.round(DAYS_A_WEEK * sale.weeks);
}
