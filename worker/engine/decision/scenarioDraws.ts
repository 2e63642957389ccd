import type { Probability } from "../quantity.ts";
import type { UnseenFaults } from "../service/unseenFaults.ts";
import { shiftedSobolPoints } from "../statistics/sobolPoints.ts";
import { zeroRows } from "../statistics/zeroRows.ts";
import type { Situation } from "./situation.ts";

/** Scenarios of an appraisal: a power of two, for Sobol's points. */
export const SCENARIO_COUNT = 128;
/** Coordinates: the class of history, the papers, the jobs that may fail, then the checks not looked at. */
const CLASS = 0;
const PAPERS = 1;
const FIRST_JOB = 2;
const MOST_JOBS = 16;
const FIRST_CHECK = FIRST_JOB + MOST_JOBS;
const DIMENSIONS = 80;

/** The same points for every bike, so that what differs between two answers is the bikes. */
const POINTS = shiftedSobolPoints(SCENARIO_COUNT, DIMENSIONS);

/** What is the case with one bike in one scenario. */
export interface Draw {
  /** Place of the class among those that are likely at all. */
  readonly historyClass: number;
  /** Level of each check not looked at, and where in the level's share of chance the draw lies, 0 to 1. */
  readonly ranks: Int8Array;
  readonly within: Float64Array;
  readonly index: number;
}

/** A uniform number for the papers. */
export function papersDraw(index: number): Probability {
  return POINTS[index * DIMENSIONS + PAPERS]!;
}

/** A uniform number for a job that may fail, by its place among the jobs. Plans hold fewer than there are coordinates; beyond them they are used again. */
export function jobDraw(index: number, job: number): Probability {
  return POINTS[index * DIMENSIONS + FIRST_JOB + (job % MOST_JOBS)]!;
}

/** Draws the levels of all checks not looked at in every scenario: first the class of history, then each check in it on its own. */
export function drawScenarios(unseen: Situation["unseen"]): readonly Draw[] {
  const count = unseen.faults.length;
  const within = zeroRows(SCENARIO_COUNT, count);
  const draws: Draw[] = [];
  for (let index = 0; index < SCENARIO_COUNT; index++)
    draws.push(drawLevels(index, unseen, { ranks: new Int8Array(count), within: within() }));
  return draws;
}

function drawLevels(
  index: number,
  { faults, weights }: Situation["unseen"],
  into: { ranks: Int8Array; within: Float64Array },
): Draw {
  const historyClass = classAt(POINTS[index * DIMENSIONS + CLASS]!, weights);
  for (let place = 0; place < faults.length; place++) {
    const coordinate = FIRST_CHECK + (place % (DIMENSIONS - FIRST_CHECK));
    drawLevel(POINTS[index * DIMENSIONS + coordinate]!, faults[place]!, historyClass, place, into);
  }
  return { historyClass, ranks: into.ranks, within: into.within, index };
}

function classAt(uniform: Probability, weights: Float64Array): number {
  let left = uniform;
  for (let place = 0; place < weights.length - 1; place++) {
    left -= weights[place]!;
    if (left < 0) return place;
  }
  return weights.length - 1;
}

/** Worst level first, so that the draws of a fault lie together at one end. */
function drawLevel(
  uniform: Probability,
  { chances }: UnseenFaults,
  historyClass: number,
  place: number,
  { ranks, within }: { ranks: Int8Array; within: Float64Array },
): void {
  let left = uniform;
  for (let rank = chances.length - 1; rank > 0; rank--) {
    const chance = chances[rank]?.[historyClass] ?? 0;
    if (left < chance) {
      ranks[place] = rank;
      within[place] = left / chance;
      return;
    }
    left -= chance;
  }
  ranks[place] = 0;
  within[place] = 0;
}
