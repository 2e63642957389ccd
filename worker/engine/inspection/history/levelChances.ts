import { type Attributes, holds } from "../../bicycle.ts";
import { DomainError } from "../../domainError.ts";
import { type InspectionIndex, priorKey, type RankedCheck, type RankedModifier } from "../inspectionIndex.ts";
import { modified } from "../modified.ts";
import { classChances, sameInEveryClass } from "./classChances.ts";
import type { LevelChances } from "./historyIndex.ts";

export type LevelChancesOf = (ranked: RankedCheck) => LevelChances;

/**
 * Chances of the levels of each check on one bike before anything is looked at: the table's for era and keeping, or solved for anew where a
 * modifier holds.
 * @returns a function of a check; it throws DomainError `inconsistent-table` where the priors have no row
 */
export function levelChancesOn(
  attributes: Attributes,
  { history, modifiers }: InspectionIndex,
): LevelChancesOf {
  const cell = history.chances.get(priorKey(attributes.era, attributes.kept));
  const weights = history.weights.get(attributes.kept)!;
  return ({ check }) => {
    const plain = cell?.get(check.id);
    if (plain === undefined) {
      const where = `${attributes.era}, ${attributes.kept}`;
      throw new DomainError("inconsistent-table", check.id, where, "a prior for every era and keeping");
    }
    const rows = holding(modifiers.get(check.id), attributes);
    if (rows === null) return plain;
    const prior = modified(plain.prior, rows);
    const shifts = history.shifts.get(check.id);
    const byClass = shifts ? classChances(prior, check.ordered, weights, shifts) : sameInEveryClass(prior);
    return { prior, byClass };
  };
}

/** The modifiers that hold for the bike; null where none does, as for nearly every check. */
function holding(
  rows: readonly RankedModifier[] | undefined,
  attributes: Attributes,
): readonly RankedModifier[] | null {
  if (!rows?.some((row) => holds(row.when, attributes))) return null;
  return rows.filter((row) => holds(row.when, attributes));
}
