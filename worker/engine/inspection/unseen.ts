import { type Attributes, holds } from "../bicycle.ts";
import { appliesTo } from "./applicability.ts";
import type { Acquittal, CheckId } from "./check.ts";
import type { Finding, FindingsByCheck, UnseenCheck } from "./finding.ts";
import { sameInEveryClass } from "./history/classChances.ts";
import { CLASS_COUNT } from "./history/factor.ts";
import type { History } from "./history/history.ts";
import type { LevelChances } from "./history/historyIndex.ts";
import { levelChances } from "./history/levelChances.ts";
import type { InspectionIndex } from "./inspectionIndex.ts";

/**
 * Checks that apply and were not looked at, with the chances of their levels: the prior for era and keeping, modified for
 * this bike, and moved by what was found through the history that both share; or all on the best level where a finding or the description
 * clears the check. A per-wheel check seen at one wheel alone leaves the other unseen. Serial number and ownership keep their priors:
 * they are owed, never inferred.
 * @param history what the same findings say
 * @throws DomainError `inconsistent-table` where the priors have no row
 */
export function unseenChecks(
  attributes: Attributes,
  byCheck: FindingsByCheck,
  history: History,
  index: InspectionIndex,
): readonly UnseenCheck[] {
  const unseen: UnseenCheck[] = [];
  for (const ranked of index.checks) {
    const { check } = ranked;
    const seen = byCheck.get(check.id) ?? NONE;
    if (coversBike(seen) || !appliesTo(check, attributes)) continue;
    const acquittal = acquittalOf(check.id, attributes, byCheck, index);
    const before = levelChances(ranked, attributes, index);
    const one = acquittal
      ? acquitted(check.id, acquittal, before)
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
function acquitted(id: CheckId, { check: by }: Acquittal, { prior }: LevelChances): UnseenCheck {
  const probabilities = cleared(prior.length);
  return {
    check: id,
    probabilities,
    prior: by === null ? probabilities : prior,
    byClass: sameInEveryClass(probabilities),
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

function cleared(levels: number): number[] {
  return Array.from({ length: levels }, (_, rank) => (rank === 0 ? 1 : 0));
}

/** Chances of the levels averaged over the classes. */
function averaged({ prior, byClass }: LevelChances, weights: Float64Array): readonly number[] {
  const levels = prior.length;
  return prior.map((_, rank) => {
    let chance = 0;
    for (let z = 0; z < CLASS_COUNT; z++) chance += weights[z]! * byClass[z * levels + rank]!;
    return Math.min(1, chance);
  });
}
