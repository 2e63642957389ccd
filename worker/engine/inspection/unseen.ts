import { type Attributes, holds } from "../bicycle.ts";
import { appliesTo } from "./applicability.ts";
import type { Acquittal, CheckId } from "./check.ts";
import type { Finding, FindingsByCheck, UnseenCheck } from "./finding.ts";
import { CLASS_COUNT } from "./history/factor.ts";
import type { History } from "./history/history.ts";
import type { LevelChances } from "./history/historyIndex.ts";
import type { LevelChancesOf } from "./history/levelChances.ts";
import type { InspectionIndex } from "./inspectionIndex.ts";

/**
 * Checks that apply and were not looked at, with the chances of their levels: the prior for era and keeping, modified for
 * this bike, and moved by what was found through the history that both share; or all on the best level where a finding or the description
 * clears the check. A per-wheel check seen at one wheel alone leaves the other unseen. Serial number and ownership keep their priors:
 * they are owed, never inferred.
 * @param history what the same findings say
 * @param chancesOf the chances of a check's levels on this bike
 */
export function unseenChecks(
  attributes: Attributes,
  byCheck: FindingsByCheck,
  history: History,
  chancesOf: LevelChancesOf,
  index: InspectionIndex,
): readonly UnseenCheck[] {
  const unseen: UnseenCheck[] = [];
  for (const ranked of index.checks) {
    const { check } = ranked;
    const seen = byCheck.get(check.id) ?? NONE;
    if (coversBike(seen) || !appliesTo(check, attributes)) continue;
    const acquittal = acquittalOf(check.id, attributes, byCheck, index);
    const before = chancesOf(ranked);
    const one = acquittal
      ? acquitted(check.id, acquittal, before, index.history.cleared.get(check.levels.length)!)
      : {
          check: check.id,
          ...linked(before, history, index.history.shifts.has(check.id)),
          acquittedBy: null,
        };
    if (seen[0] === undefined) unseen.push(one);
    else unseen.push({ ...one, position: seen[0].position === "front" ? "rear" : "front" });
  }
  return unseen;
}

/** Cleared by a finding, or by the description alone, which was known before. */
function acquitted(
  id: CheckId,
  { check: by }: Acquittal,
  before: LevelChances,
  best: LevelChances,
): UnseenCheck {
  const { prior, byClass } = best;
  return {
    check: id,
    probabilities: prior,
    prior: by === null ? prior : before.prior,
    byClass,
    acquittedBy: by,
  };
}

/** A check that no factor shifts keeps its prior to the last digit. */
function linked(
  before: LevelChances,
  { weights }: History,
  shifted: boolean,
): Pick<UnseenCheck, "probabilities" | "prior" | "byClass"> {
  return { probabilities: shifted ? averaged(before, weights) : before.prior, ...before };
}

const NONE: readonly Finding[] = [];

/** Whether the findings of one check speak for the whole bike: it, both wheels at once, or each of them. */
function coversBike(findings: readonly Finding[]): boolean {
  return (
    findings.length > 1 ||
    (findings[0] !== undefined && (findings[0].position === "bike" || findings[0].position === "both"))
  );
}

/** What clears a check: another one, seen on the whole bike at the level that acquits, or the description alone. */
function acquittalOf(
  check: CheckId,
  attributes: Attributes,
  byCheck: FindingsByCheck,
  index: InspectionIndex,
): Acquittal | null {
  const row = index.acquittals.get(check)?.find(({ check: by, level, when }) => {
    if (!holds(when, attributes)) return false;
    if (by === null) return true;
    const seen = byCheck.get(by) ?? NONE;
    return coversBike(seen) && seen.every((one) => one.level === level);
  });
  return row ?? null;
}

/** Chances of the levels averaged over the classes. */
function averaged({ prior, byClass }: LevelChances, weights: Float64Array): readonly number[] {
  const levels = prior.length;
  const chances = new Array<number>(levels).fill(0);
  for (let z = 0; z < CLASS_COUNT; z++) {
    const weight = weights[z]!;
    for (let rank = 0; rank < levels; rank++) chances[rank]! += weight * byClass[z * levels + rank]!;
  }
  return chances;
}
