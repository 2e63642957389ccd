import { type Attributes, holds } from "../../bicycle.ts";
import { DomainError } from "../../domainError.ts";
import { type InspectionIndex, priorKey, type RankedCheck } from "../inspectionIndex.ts";
import { modified } from "../modified.ts";
import { classChances, sameInEveryClass } from "./classChances.ts";
import type { LevelChances } from "./historyIndex.ts";

/**
 * Chances of the levels of one check on this bike before anything is looked at: the table's for era and keeping, or solved for anew
 * where a modifier holds.
 * @throws DomainError `inconsistent-table` where the priors have no row
 */
export function levelChances(
  { check }: RankedCheck,
  attributes: Attributes,
  { history, modifiers }: InspectionIndex,
): LevelChances {
  const plain = history.chances.get(priorKey(attributes.era, attributes.kept))?.get(check.id);
  if (plain === undefined) {
    const cell = `${attributes.era}, ${attributes.kept}`;
    throw new DomainError("inconsistent-table", check.id, cell, "a prior for every era and keeping");
  }
  const rows = modifiers.get(check.id)?.filter((row) => holds(row.when, attributes)) ?? [];
  if (rows.length === 0) return plain;
  const prior = modified(plain.prior, rows);
  const shifts = history.shifts.get(check.id);
  const byClass = shifts
    ? classChances(prior, check.ordered, history.weights.get(attributes.kept)!, shifts)
    : sameInEveryClass(prior);
  return { prior, byClass };
}
