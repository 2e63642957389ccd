import { mixtureBand, valueBand } from "../valuation/valueBand.ts";
import type { Appraisal, ValueBand } from "./appraisal.ts";
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
  const { pricing, parts, notRidingChance, frameUnsaleableChance } = situation;
  const restored = finishedBand("restore", situation, courses);
  const madeSafe = finishedBand("make-safe", situation, courses);
  const told = pricing.rideable(1, { polished: true, repainted: false });
  return {
    asFound: mixtureBand(pricing.asFoundRiding, pricing.asFoundNotRiding, notRidingChance),
    madeSafe,
    restored,
    parts: mixtureBand(parts.goingRate(true), parts.goingRate(false), frameUnsaleableChance),
    pieces: reportedPieces(situation),
    drivers: told.drivers,
    extrapolates: told.extrapolates,
  };
}

function finishedBand(
  course: "restore" | "make-safe",
  situation: Situation,
  courses: readonly WeighedCourse[],
): ValueBand | null {
  const weighed = courses.find((one) => one.course === course)!;
  if (weighed.open) {
    const { plan } = weighed;
    const condition = situation.unworkedCondition + plan.gain;
    return valueBand(
      situation.pricing.rideable(condition, { polished: plan.polishes, repainted: plan.repaints }),
    );
  }
  if (situation.wholeSaleClosedBecause !== null || situation.rideableClosedBecause === null) return null;
  const polished = course === "restore";
  return valueBand(
    situation.pricing.rideable(polished ? 1 : 1 - situation.pricing.notPolished, {
      polished,
      repainted: false,
    }),
  );
}
