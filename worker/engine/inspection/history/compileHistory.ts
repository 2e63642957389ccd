import { KEPT, type Kept } from "../../bicycle.ts";
import { DomainError } from "../../domainError.ts";
import { exp } from "../../statistics/elementary/exp.ts";
import type { CheckId } from "../check.ts";
import type { RankedCheck } from "../inspectionIndex.ts";
import { classChances, sameInEveryClass } from "./classChances.ts";
import { CLASS_COUNT, FACTORS, holdsFactor } from "./factor.ts";
import type { HistoryIndex, LevelChances, RankedSymptom } from "./historyIndex.ts";
import type { HistoryTable, Loading, Symptom } from "./historyTable.ts";

type ById = ReadonlyMap<CheckId, RankedCheck>;
type Priors = ReadonlyMap<string, ReadonlyMap<CheckId, readonly number[]>>;

/**
 * The history ordered for look-up: the classes' chances by keeping, each check's shifts, and the chances of its levels in each class for every era
 * and keeping, which take about a millisecond in all.
 * @param priors by `priorKey`, then by check
 * @throws DomainError `inconsistent-table` for a check that does not exist, a chance that is none, other factors than the four
 */
export function compileHistory(
  table: HistoryTable,
  symptoms: readonly Symptom[],
  priors: Priors,
  byId: ById,
): HistoryIndex {
  requireFactors(table);
  const shifts = new Map<CheckId, Float64Array>();
  for (const row of table.loadings) {
    if (!byId.has(row.check))
      throw new DomainError("inconsistent-table", "history", row.check, "the id of a check");
    shifts.set(row.check, classShifts(row, table.scale));
  }
  const weights = new Map(KEPT.map((kept) => [kept, classWeights(table, kept)]));
  return {
    weights,
    shifts,
    chances: chancesByKey(priors, weights, shifts, byId),
    cleared: clearedByCount(byId),
    symptoms: bySymptom(symptoms, byId),
  };
}

function requireFactors({ factors }: HistoryTable): void {
  if (factors.length !== FACTORS.length || factors.some(({ id }, at) => id !== FACTORS[at])) {
    const got = factors.map(({ id }) => id).join(", ");
    throw new DomainError(
      "inconsistent-table",
      "history",
      got,
      `the factors ${FACTORS.join(", ")}, in this order`,
    );
  }
  for (const { id, chance } of factors) {
    for (const kept of KEPT) {
      if (!(chance[kept] > 0 && chance[kept] < 1))
        throw new DomainError(
          "inconsistent-table",
          `history, ${id}, ${kept}`,
          chance[kept],
          "a chance between 0 and 1",
        );
    }
  }
}

/** Chance of each class before anything is looked at: the factors are independent. */
function classWeights({ factors }: HistoryTable, kept: Kept): Float64Array {
  return Float64Array.from({ length: CLASS_COUNT }, (_, z) =>
    factors.reduce(
      (product, { chance }, f) => product * (holdsFactor(z, f) ? chance[kept] : 1 - chance[kept]),
      1,
    ),
  );
}

/** What each class multiplies the odds of a check's worse levels by. */
function classShifts(row: Loading, scale: number): Float64Array {
  return Float64Array.from({ length: CLASS_COUNT }, (_, z) =>
    exp(scale * FACTORS.reduce((sum, id, f) => (holdsFactor(z, f) ? sum + (row[id] ?? 0) : sum), 0)),
  );
}

function chancesByKey(
  priors: Priors,
  weights: ReadonlyMap<Kept, Float64Array>,
  shifts: ReadonlyMap<CheckId, Float64Array>,
  byId: ById,
): Map<string, Map<CheckId, LevelChances>> {
  const result = new Map<string, Map<CheckId, LevelChances>>();
  for (const [key, row] of priors) {
    const kept = KEPT.find((one) => key.endsWith(`|${one}`))!;
    const chances = new Map<CheckId, LevelChances>();
    for (const [id, prior] of row) {
      const shift = shifts.get(id);
      const { ordered } = byId.get(id)!.check;
      const byClass = shift
        ? classChances(prior, ordered, weights.get(kept)!, shift)
        : sameInEveryClass(prior);
      chances.set(id, { prior, byClass });
    }
    result.set(key, chances);
  }
  return result;
}

function clearedByCount(byId: ById): Map<number, LevelChances> {
  const counts = new Set([...byId.values()].map(({ check }) => check.levels.length));
  return new Map(
    [...counts].map((count) => {
      const prior = Array.from({ length: count }, (_, rank) => (rank === 0 ? 1 : 0));
      return [count, { prior, byClass: sameInEveryClass(prior) }];
    }),
  );
}

function bySymptom(symptoms: readonly Symptom[], byId: ById): Map<CheckId, readonly RankedSymptom[]> {
  const result = new Map<CheckId, RankedSymptom[]>();
  for (const { check, level, when, causes } of symptoms) {
    const rank = byId.get(check)?.ranks.get(level);
    if (rank === undefined) throw new DomainError("inconsistent-table", check, level, "a level of a check");
    const rows = result.get(check) ?? [];
    rows.push({ rank, when, causes });
    result.set(check, rows);
  }
  return result;
}
