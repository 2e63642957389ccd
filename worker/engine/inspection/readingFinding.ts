import { type Attributes, holds } from "../bicycle.ts";
import type { Finding, Position } from "./finding.ts";
import type { RankedCheck } from "./inspectionIndex.ts";
import type { Reading } from "./observation.ts";
import { type SettledReading, settledReading } from "./settledReading.ts";

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
  const settled = settledReading(ranked, reading, attributes);
  const { measured, byMeasurement, rank } = settled;
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
    ...(measured !== null && { derived: { value: measured.value, unit: measured.unit } }),
    ...(between !== null && { borderline: between }),
    note: noteOf(settled, level.description, between, adjustment?.note),
  };
}

function noteOf(
  { measured }: SettledReading,
  description: string,
  between: readonly [string, string] | null,
  adjusted: string | undefined,
): string {
  const sentences = [measured?.text, description, adjusted].filter(
    (text) => text !== undefined && text !== "",
  );
  if (between !== null)
    sentences.push(
      `Within one reading error of the limit between ${between[0]} and ${between[1]}: measure again`,
    );
  return sentences.map((text) => (/[.?]$/.test(text!) ? text : `${text}.`)).join(" ");
}
