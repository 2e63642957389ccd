import type { CheckId, LevelId } from "../check.ts";
import type { Inspection, UnseenCheck } from "../finding.ts";
import { CLASS_COUNT } from "./factor.ts";

/** A finding that makes an unseen fault likelier, and by how much. */
export interface RaisedBy {
  readonly check: CheckId;
  readonly level: LevelId;
  /** Odds of the fault with all evidence over its odds without this finding. */
  readonly oddsFactor: number;
}

/** A finding that moves the odds by less is not named. */
const WORTH_NAMING = 1.15;
const MOST_NAMED = 3;

/**
 * For faults of one inspection: the findings that raise the odds of a level (on ordered levels: that level or worse) most, largest first, at most
 * three. Each finding is left out in turn, by dividing the class weights by its likelihood, so two that say the same both have small factors:
 * either alone would do.
 * @returns a function of an unseen check, whether its levels are degrees, and a level's rank
 */
export function raisedByIn({
  history: { evidence, weights },
}: Inspection): (unseen: UnseenCheck, ordered: boolean, rank: number) => readonly RaisedBy[] {
  const { findings, likelihoods } = evidence;
  const without = new Float64Array(findings.length * CLASS_COUNT);
  for (let at = 0; at < without.length; at++) without[at] = weights[at % CLASS_COUNT]! / likelihoods[at]!;
  const within = new Float64Array(CLASS_COUNT);
  return ({ byClass, prior }, ordered, rank) => {
    fillChances(within, byClass, prior.length, rank, ordered ? prior.length - 1 : rank);
    const odds = oddsOf(within, weights, 0);
    const raised: RaisedBy[] = [];
    for (let at = 0; at < findings.length; at++) {
      const oddsFactor = odds / oddsOf(within, without, at * CLASS_COUNT);
      const { check, level } = findings[at]!;
      if (oddsFactor >= WORTH_NAMING) raised.push({ check, level, oddsFactor });
    }
    return raised.sort((a, b) => b.oddsFactor - a.oddsFactor).slice(0, MOST_NAMED);
  };
}

/** Each class's chance of a level from `first` to `last`. */
function fillChances(
  within: Float64Array,
  byClass: Float64Array,
  levels: number,
  first: number,
  last: number,
): void {
  for (let z = 0; z < CLASS_COUNT; z++) {
    let chance = 0;
    for (let level = first; level <= last; level++) chance += byClass[z * levels + level]!;
    within[z] = chance;
  }
}

/** Odds of something from its chance in each class and the classes' weights from an index on, whatever these sum to. */
function oddsOf(within: Float64Array, weights: Float64Array, from: number): number {
  let chance = 0;
  let other = 0;
  for (let z = 0; z < CLASS_COUNT; z++) {
    const weight = weights[from + z]!;
    chance += weight * within[z]!;
    other += weight * (1 - within[z]!);
  }
  return chance / other;
}
