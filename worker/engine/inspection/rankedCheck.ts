import { DomainError } from "../domainError.ts";
import type { Check, LevelId, Measurement, Threshold } from "./check.ts";
import type { RankedCheck } from "./inspectionIndex.ts";

/**
 * A check with its levels numbered and its limits in ascending order.
 * @throws DomainError `inconsistent-table` for a level that the check does not have, or limits with a gap or an overlap
 */
export function rankedCheck(check: Check): RankedCheck {
  const ranks = new Map(check.levels.map((level, rank) => [level.id, rank]));
  for (const level of levelsNamed(check)) {
    if (!ranks.has(level)) {
      throw new DomainError("inconsistent-table", check.id, level, `one of ${[...ranks.keys()].join(", ")}`);
    }
  }
  const { measurement } = check;
  return {
    ranks,
    sentences: check.levels.map(({ description }) => sentence(description)),
    check: measurement === null ? check : { ...check, measurement: inOrder(check.id, measurement) },
  };
}

/** With its full stop. */
export function sentence(text: string): string {
  return text === "" || /[.?]$/.test(text) ? text : `${text}.`;
}

function levelsNamed(check: Check): LevelId[] {
  const { measurement } = check;
  const named = [...check.adjustments.map((row) => row.level), ...check.neededFrom.map((row) => row.level)];
  if (measurement === null) return named;
  const { thresholds, thresholdsWhen, flags, derivation } = measurement;
  const all = [...thresholds, ...thresholdsWhen.flatMap((row) => row.thresholds)];
  named.push(...all.map((row) => row.level));
  named.push(...flags.flatMap((flag) => [flag.setsLevel, flag.raisesTo].filter((id) => id !== undefined)));
  if (derivation.kind === "bead-seat") named.push(...Object.keys(derivation.supply), derivation.unknownLevel);
  return named;
}

function inOrder(id: string, measurement: Measurement): Measurement {
  const { thresholds, thresholdsWhen } = measurement;
  return {
    ...measurement,
    thresholds: ascending(id, thresholds),
    thresholdsWhen: thresholdsWhen.map((row) => ({ ...row, thresholds: ascending(id, row.thresholds) })),
  };
}

function ascending(id: string, thresholds: readonly Threshold[]): readonly Threshold[] {
  const open = Number.NEGATIVE_INFINITY;
  const sorted = [...thresholds].sort((a, b) => (a.from ?? open) - (b.from ?? open));
  sorted.forEach((row, i) => {
    const next = sorted[i + 1];
    const continues = next === undefined || (row.below !== null && row.below === next.from);
    const isRange = row.from === null || row.below === null || row.from < row.below;
    if (!continues || !isRange) {
      throw new DomainError("inconsistent-table", id, row.level, "limits that join without gap or overlap");
    }
  });
  return sorted;
}
