import { ERAS, KEPT, type Kept } from "../../worker/engine/bicycle.ts";
import type { CheckId } from "../../worker/engine/inspection/check.ts";
import { CLASS_COUNT } from "../../worker/engine/inspection/history/factor.ts";
import { type InspectionIndex, priorKey } from "../../worker/engine/inspection/inspectionIndex.ts";
import type { EvidenceRule } from "../../worker/tables/evidenceRuleSchema.ts";

/**
 * What the hidden history makes of an evidence rule: the odds that the one check stands at the level or worse, given what was seen of the other, over the
 * odds before. One figure for each era and keeping, on a bike that no modifier holds for.
 */
export function impliedOdds({ seen, unseen }: EvidenceRule, index: InspectionIndex): number[] {
  const seenRank = rankOf(index, seen.check, seen.atLeast ?? seen.atMost!);
  const unseenRank = rankOf(index, unseen.check, unseen.atLeast);
  return cells().map(([key, kept]) => {
    const weights = index.history.weights.get(kept)!;
    const beyond = tail(index, key, seen.check, seen.atMost === undefined ? seenRank : seenRank + 1);
    const evidence = seen.atMost === undefined ? beyond : beyond.map((chance) => 1 - chance);
    const fault = tail(index, key, unseen.check, unseenRank);
    const before = average(weights, fault);
    const together = average(
      weights,
      evidence.map((chance, z) => chance * fault[z]!),
    );
    const after = together / average(weights, evidence);
    return odds(after) / odds(before);
  });
}

/** The 21 eras and ways of being kept: key of the priors, and keeping. */
export function cells(): (readonly [string, Kept])[] {
  return ERAS.flatMap((era) => KEPT.map((kept) => [priorKey(era, kept), kept] as const));
}

export function odds(chance: number): number {
  return chance / (1 - chance);
}

export function geometricMean(values: readonly number[]): number {
  return Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);
}

function rankOf(index: InspectionIndex, check: CheckId, level: string): number {
  return index.byId.get(check)!.ranks.get(level)!;
}

/** Chance of a rank or a later one in each class. */
function tail(index: InspectionIndex, key: string, check: CheckId, rank: number): number[] {
  const { byClass, prior } = index.history.chances.get(key)!.get(check)!;
  return Array.from({ length: CLASS_COUNT }, (_, z) =>
    byClass.subarray(z * prior.length + rank, (z + 1) * prior.length).reduce((a, b) => a + b, 0),
  );
}

function average(weights: Float64Array, values: readonly number[]): number {
  return values.reduce((sum, value, z) => sum + weights[z]! * value, 0);
}
