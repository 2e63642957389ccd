import { DomainError } from "../domainError.ts";
import { requireSettlingDefaults } from "./attributeDefaults.ts";
import type { CheckId, LevelId, Prior, PriorModifier } from "./check.ts";
import { compileHistory } from "./history/compileHistory.ts";
import { type InspectionIndex, priorKey, type RankedCheck, type RankedModifier } from "./inspectionIndex.ts";
import type { InspectionTables } from "./inspectionTables.ts";
import { rankedCheck } from "./rankedCheck.ts";

/** How far the sum of one row of chances may be from 1: the rounding of decimal fractions. */
const SUM_TOLERANCE = 1e-9;

/**
 * The tables ordered for look-up, so that one inspection takes some tens of microseconds. Refuses tables that would fail
 * later: ids that name nothing, limits with gaps, chances that do not sum to 1, defaults that leave an attribute open.
 * @throws DomainError `inconsistent-table`
 */
export function compileInspection(tables: InspectionTables): InspectionIndex {
  requireSettlingDefaults(tables.attributeDefaults);
  const checks = tables.checks.map(rankedCheck);
  const byId = new Map(checks.map((one) => [one.check.id, one]));
  if (byId.size !== checks.length) {
    throw new DomainError("inconsistent-table", "checks", checks.length, "every check's id only once");
  }
  const acquittals = tables.acquittals.flatMap((row) => {
    if (row.check !== null) rankIn(byId, row.check, row.level);
    return row.acquits.map((cleared) => [known(byId, cleared).check.id, row] as const);
  });
  return {
    checks,
    byId,
    modifiers: grouped(tables.priorModifiers.map((row) => [row.check, rankedModifier(row, byId)] as const)),
    acquittals: grouped(acquittals),
    attributeDefaults: tables.attributeDefaults,
    tyreNames: tables.tyreNames,
    history: compileHistory(tables.history, tables.symptoms, priorsByKey(tables.priors, byId), byId),
    beadSeatCheck: checks.find((one) => one.check.measurement?.derivation.kind === "bead-seat") ?? null,
  };
}

type ById = ReadonlyMap<CheckId, RankedCheck>;

function known(byId: ById, id: CheckId): RankedCheck {
  const found = byId.get(id);
  if (found === undefined) throw new DomainError("inconsistent-table", "check", id, "the id of a check");
  return found;
}

function rankIn(byId: ById, id: CheckId, level: LevelId | null): number {
  const rank = known(byId, id).ranks.get(level ?? "");
  if (rank === undefined) throw new DomainError("inconsistent-table", id, level, "one of its levels");
  return rank;
}

function rankedModifier({ check, fromLevel, when, odds }: PriorModifier, byId: ById): RankedModifier {
  if (!(odds > 0)) throw new DomainError("inconsistent-table", check, odds, "odds above 0");
  return { fromRank: rankIn(byId, check, fromLevel), when, odds };
}

function priorsByKey(priors: readonly Prior[], byId: ById): Map<string, Map<CheckId, readonly number[]>> {
  const result = new Map<string, Map<CheckId, readonly number[]>>();
  for (const { check, era, kept, probabilities } of priors) {
    const sum = probabilities.reduce((a, b) => a + b, 0);
    const complete = probabilities.length === known(byId, check).check.levels.length;
    if (!complete || !(Math.abs(sum - 1) < SUM_TOLERANCE) || probabilities.some((p) => p < 0)) {
      throw new DomainError(
        "inconsistent-table",
        `${check}, ${era}, ${kept}`,
        sum,
        "a chance for each level, summing to 1",
      );
    }
    const key = priorKey(era, kept);
    const row = result.get(key) ?? new Map<CheckId, readonly number[]>();
    result.set(key, row.set(check, probabilities));
  }
  return result;
}

function grouped<T>(pairs: readonly (readonly [CheckId, T])[]): Map<CheckId, readonly T[]> {
  const result = new Map<CheckId, readonly T[]>();
  for (const [key, value] of pairs) result.set(key, [...(result.get(key) ?? []), value]);
  return result;
}
