import type { Money } from "../../quantity.ts";
import type { CourseId } from "../../service/operation.ts";
import { COURSES } from "../../service/operation.ts";
import type { Situation } from "../situation.ts";
import type { LevelOutlook } from "./levelOutlook.ts";
import type { LookValue } from "./nextCheck.ts";

/** What a look takes, and where it is made. */
export type LookCost = Pick<LookValue, "position" | "owed" | "fee" | "where" | "minutes">;

/**
 * A look's value with its costs.
 * @param outlooks one a level that may be
 * @param now the course decided on
 */
export function lookValue(
  cost: LookCost,
  sampleInformation: Money,
  outlooks: readonly LevelOutlook[],
  now: CourseId,
  method: LookValue["method"],
  { settled }: Situation,
): LookValue {
  const { fee, minutes } = cost;
  const minuteWorth = settled.workshop.hourlyGoal / 60;
  return {
    ...cost,
    sampleInformation,
    netGain: sampleInformation - fee - minutes * minuteWorth,
    gainPerMinute: (sampleInformation - fee) / minutes - minuteWorth,
    offerSwing: settled.purchase.paid
      ? null
      : offerSwing(outlooks, settled.purchase.price - settled.reuseWorth),
    couldBecome: couldBecome(outlooks, now),
    method,
  };
}

/**
 * Highest less lowest price worth paying: the best course other than leaving and the price asked, at least 0; nothing where the matter stops.
 * @param asked less what leaving is worth
 */
function offerSwing(outlooks: readonly LevelOutlook[], asked: Money): Money {
  let highest = 0;
  let lowest = Number.POSITIVE_INFINITY;
  for (const { worths, stop } of outlooks) {
    let offer = 0;
    if (!stop)
      worths.forEach((worth, place) => {
        if (worth !== null && COURSES[place] !== "leave") offer = Math.max(offer, worth + asked);
      });
    highest = Math.max(highest, offer);
    lowest = Math.min(lowest, offer);
  }
  return outlooks.length > 0 ? highest - lowest : 0;
}

function couldBecome(outlooks: readonly LevelOutlook[], now: CourseId): CourseId | null {
  const chances = new Map<CourseId, number>();
  for (const { course, chance } of outlooks)
    if (course !== now) chances.set(course, (chances.get(course) ?? 0) + chance);
  let likeliest: CourseId | null = null;
  for (const [course, chance] of chances)
    if (likeliest === null || chance > chances.get(likeliest)!) likeliest = course;
  return likeliest;
}
