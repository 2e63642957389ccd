import { type Attributes, holds } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import { appliesTo } from "./applicability.ts";
import type { Acquittal, CheckId } from "./check.ts";
import type { Finding, FindingsByCheck, UnseenCheck } from "./finding.ts";
import { type InspectionIndex, priorKey, type RankedCheck, type RankedModifier } from "./inspectionIndex.ts";

/**
 * Checks that apply and were not looked at, with the chances of their levels: the prior for era and keeping, modified for
 * this bike, or all on the best level where a finding or the description clears the check. A per-wheel check seen at one
 * wheel alone leaves the other unseen. Serial number and ownership keep their priors like any other: they are owed, never
 * inferred.
 * @throws DomainError `inconsistent-table` where the priors have no row
 */
export function unseenChecks(
  attributes: Attributes,
  byCheck: FindingsByCheck,
  index: InspectionIndex,
): readonly UnseenCheck[] {
  const priors = index.priors.get(priorKey(attributes.era, attributes.kept));
  const unseen: UnseenCheck[] = [];
  for (const ranked of index.checks) {
    const { check } = ranked;
    const seen = byCheck.get(check.id) ?? NONE;
    if (coversBike(seen) || !appliesTo(check, attributes)) continue;
    const acquittal = acquittalOf(check.id, attributes, byCheck, index);
    const probabilities =
      acquittal === null ? chances(ranked, priors, attributes, index) : cleared(check.levels.length);
    const one: UnseenCheck = { check: check.id, probabilities, acquittedBy: acquittal?.check ?? null };
    if (seen[0] === undefined) unseen.push(one);
    else unseen.push({ ...one, position: seen[0].position === "front" ? "rear" : "front" });
  }
  return unseen;
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

function chances(
  { check }: RankedCheck,
  priors: ReadonlyMap<CheckId, readonly number[]> | undefined,
  attributes: Attributes,
  index: InspectionIndex,
): readonly number[] {
  const prior = priors?.get(check.id);
  if (prior === undefined) {
    const cell = `${attributes.era}, ${attributes.kept}`;
    throw new DomainError("inconsistent-table", check.id, cell, "a prior for every era and keeping");
  }
  const modifiers = index.modifiers.get(check.id);
  return modifiers
    ? modified(
        prior,
        modifiers.filter((row) => holds(row.when, attributes)),
      )
    : prior;
}

/**
 * Chances after modifiers: each multiplies the odds of its set of levels (fromRank and worse) and keeps the proportions
 * inside the set and outside it. Multiplying the set's chances and dividing by the new sum does exactly that, and the
 * order of the modifiers does not matter.
 * @param prior chances of the levels, summing to 1
 * @returns chances summing to 1
 */
export function modified(
  prior: readonly number[],
  modifiers: readonly Pick<RankedModifier, "fromRank" | "odds">[],
): readonly number[] {
  if (modifiers.length === 0) return prior;
  const weights = prior.map((chance, rank) =>
    modifiers.reduce((weight, { fromRank, odds }) => (rank >= fromRank ? weight * odds : weight), chance),
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}
