import type { CheckId } from "../../inspection/check.ts";
import type { UnseenCheck } from "../../inspection/finding.ts";
import type { Money, Probability } from "../../quantity.ts";
import type { UnseenFaults } from "../../service/unseenFaults.ts";
import { updated } from "../../statistics/bayes.ts";
import { courseOf, restoreNoise } from "../choice.ts";
import { blocks, condemnsFrame } from "../situation.ts";
import type { OpenFind } from "../weighFind.ts";
import { closedAt } from "./closedAt.ts";
import { frameWorth } from "./frameWorth.ts";
import type { LevelOutlook } from "./levelOutlook.ts";
import { noneOf } from "./noneOf.ts";
import { rideableOutlooks } from "./rideableOutlook.ts";
import { soldRiding } from "./soldRiding.ts";
import { stoppedThen } from "./weighedAgain.ts";

/** The outlook of one level of each of some checks, without working the find out anew. */
export type Outlook = (ranks: readonly number[], chance: Probability) => LevelOutlook;

/** Outlooks of a find for checks that become known together; null where one of them is a paper, or cleared. */
export type FindOutlook = (checks: readonly CheckId[]) => Outlook | null;

/**
 * Outlooks by class sums: the hidden history moved by the levels, the checks' own uncertainties replaced by what the levels bring, all else as it was weighed:
 * plans, prices and pieces are not made anew.
 */
export function findOutlook({ situation, courses }: OpenFind): FindOutlook {
  const { unseen, notRidingChance, frameUnsaleableChance } = situation;
  const places = new Map(unseen.faults.map((one) => [one.check.id, one]));
  const rideable = courses.map((course) =>
    course.open && course.unknown ? rideableOutlooks(course, course.unknown, situation.bench.faults) : null,
  );
  const rides = noneOf(unseen, blocks);
  const holds = noneOf(unseen, condemnsFrame);
  const noise = restoreNoise(courses, situation);
  const frame = frameWorth(situation);
  return (ids) => {
    const known = ids.flatMap((id) => places.get(id) ?? []);
    if (known.length < ids.length) return null;
    const outlooks = rideable.map((one) => one?.(known.map(({ check }) => check)) ?? null);
    const riding = rides(known);
    const holding = holds(known);
    return (ranks, chance) => {
      const classes = classesAfter(known, ranks, unseen.weights);
      const closed = closedAt(known, ranks, situation);
      const worths = courses.map((course, place): Money | null => {
        if (!course.open || closed.has(course.course)) return null;
        if (outlooks[place]) return outlooks[place](ranks, classes);
        const now = course.expected.netBenefit;
        if (course.course === "sell-as-found" && notRidingChance < 1)
          return soldRiding(course, riding(ranks, classes), situation);
        if (course.course === "break-for-parts" && frameUnsaleableChance < 1)
          return now + frame * (holding(ranks, classes) - (1 - frameUnsaleableChance));
        return now;
      });
      return {
        chance,
        worths,
        course: courseOf(worths, noise),
        stop: false,
        instead: closed.has("sell-as-found") ? situation.salvage.worth : situation.change.worth,
      };
    };
  };
}

/** The classes' weights moved by levels that are known: in a class they are independent. */
function classesAfter(
  known: readonly UnseenFaults[],
  ranks: readonly number[],
  weights: Float64Array,
): Float64Array {
  const likelihoods = new Float64Array(weights.length).fill(1);
  for (let at = 0; at < ranks.length; at++) {
    const chances = known[at]!.chances[ranks[at]!];
    if (chances) for (let z = 0; z < likelihoods.length; z++) likelihoods[z]! *= chances[z]!;
  }
  return updated(weights, likelihoods).weights;
}

/** The outlook of a level of a paper: it stops the matter or changes nothing. */
export function paperOutlook(
  find: OpenFind,
  { check: id, probabilities }: UnseenCheck,
  rank: number,
): LevelOutlook {
  const { situation, courses } = find;
  const chance = probabilities[rank]!;
  const { terminal } = situation.book.inspection.byId.get(id)!.check.levels[rank]!;
  if (terminal === "stop") return stoppedThen(find, chance);
  const worths = courses.map((course) => (course.open ? course.expected.netBenefit : null));
  const course = courseOf(worths, restoreNoise(courses, situation));
  return { chance, worths, course, stop: false, instead: situation.change.worth };
}
