import { type Attributes, holds } from "../bicycle.ts";
import type { LevelId } from "./check.ts";
import type { Finding, Position } from "./finding.ts";
import type { RankedCheck } from "./inspectionIndex.ts";
import type { MeasuredLevel } from "./measurement.ts";
import type { Reading } from "./observation.ts";
import { sentence } from "./rankedCheck.ts";
import { settledReading } from "./settledReading.ts";

/**
 * One reading as a finding, with the safety that its level has on this bike.
 * @throws DomainError with a pointer relative to the reading; see `settledReading`
 */
export function readingFinding(
  ranked: RankedCheck,
  reading: Reading,
  position: Position,
  attributes: Attributes,
): Finding {
  const { check } = ranked;
  const { measured, byMeasurement, rank } = settledReading(ranked, reading, attributes);
  const level = check.levels[rank]!;
  const adjustment = check.adjustments.find((row) => row.level === level.id && holds(row.when, attributes));
  const between = byMeasurement ? (measured?.borderline ?? null) : null;
  return {
    check: check.id,
    position,
    level: level.id,
    rank,
    severity: level.severity,
    safety: adjustment?.safety ?? level.safety,
    source: byMeasurement ? "measured" : "observed",
    ...(measured && measuredFields(measured, between)),
    note: noteOf(measured, ranked.sentences[rank]!, between, adjustment?.note),
  };
}

function measuredFields(
  { value, unit }: MeasuredLevel,
  between: readonly [LevelId, LevelId] | null,
): Pick<Finding, "derived" | "borderline"> {
  const derived = { value, unit };
  return between === null ? { derived } : { derived, borderline: between };
}

function noteOf(
  measured: MeasuredLevel | null,
  description: string,
  between: readonly [LevelId, LevelId] | null,
  adjusted: string | undefined,
): string {
  if (measured === null && adjusted === undefined) return description;
  const again =
    between && `Within one reading error of the limit between ${between[0]} and ${between[1]}: measure again`;
  return [measured?.text, description, adjusted, again]
    .map((text) => sentence(text ?? ""))
    .filter((text) => text !== "")
    .join(" ");
}
