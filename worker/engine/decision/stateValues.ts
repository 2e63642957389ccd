import { explain, predict } from "../valuation/prediction.ts";
import type { SaleDescription } from "../valuation/saleDescription.ts";
import { mixtureBand, valueBand } from "../valuation/valueBand.ts";
import type { Appraisal } from "./appraisal.ts";
import { ownSales } from "./ownSales.ts";
import { atLevel } from "./pricing.ts";
import { reportedPieces } from "./reportedPieces.ts";
import type { Situation } from "./situation.ts";
import type { WeighedCourse } from "./weighedCourse.ts";

/**
 * Going rates by state, before haggling and fee. Made safe and restored are priced after the plan of their course; where a test must be done first,
 * as a tidy bike would be. Null where nothing makes the bike rideable.
 */
export function stateValues(
  situation: Situation,
  courses: readonly WeighedCourse[],
): NonNullable<Appraisal["value"]> {
  const { pricing, parts, notRidingChance, frameUnsaleableChance, settled, book } = situation;
  const restored = finishedSale("restore", situation, courses);
  const madeSafe = finishedSale("make-safe", situation, courses);
  const { belief, logPriceLevel } = settled.market;
  const told = explain(belief, pricing.rideableSale(1, { polished: true, repainted: false }));
  const headline = madeSafe ?? pricing.asFoundSale(notRidingChance < 0.5);
  const band = (sale: SaleDescription | null) =>
    sale && valueBand(atLevel(predict(belief, sale), logPriceLevel));
  return {
    asFound: mixtureBand(pricing.asFoundRiding, pricing.asFoundNotRiding, notRidingChance),
    madeSafe: band(madeSafe),
    restored: band(restored),
    parts: mixtureBand(parts.goingRate(true), parts.goingRate(false), frameUnsaleableChance),
    pieces: reportedPieces(situation),
    referencePrice: told.referencePrice * settled.priceLevel,
    drivers: told.drivers,
    extrapolates: told.extrapolates,
    ...ownSales(settled, book.value.prior.surprising, madeSafe ? "madeSafe" : "asFound", headline),
  };
}

/** The bike as its course leaves it. */
export function finishedSale(
  course: "restore" | "make-safe",
  situation: Situation,
  courses: readonly WeighedCourse[],
): SaleDescription | null {
  const weighed = courses.find((one) => one.course === course)!;
  if (weighed.open) {
    const { plan } = weighed;
    const condition = situation.unworkedCondition + plan.gain;
    return situation.pricing.rideableSale(condition, {
      polished: plan.polishes,
      repainted: plan.repaints,
    });
  }
  if (situation.wholeSaleClosedBecause !== null || situation.rideableClosedBecause === null) return null;
  const { pricing } = situation;
  const polished = course === "restore" || pricing.polished;
  return pricing.rideableSale(polished ? 1 : 1 - pricing.notPolished, {
    polished,
    repainted: false,
  });
}
