import { isPerWheel, sendable } from "../answers/reading.ts";
import type { Check, Observation, Reading, ReportedFinding } from "../api/types.ts";
import { betweenLevels, NOT_LOOKED_AT, STILL_TO_MEASURE, wheelOpen } from "../words/checkTexts.ts";
import { uncapital } from "../words/count.ts";
import { figure } from "../words/figure.ts";
import { amount, bareLength, type LengthUnit, lengthsFor } from "../words/length.ts";
import { levelWords, plain } from "../words/plain.ts";

/** What was answered to a check, in a few words. */
export function summary(
  check: Check,
  observation: Observation | undefined,
  lengths: LengthUnit = "mm",
): string {
  if (observation === undefined) return NOT_LOOKED_AT;
  if (!isPerWheel(observation)) return said(check, observation, lengths);
  return (["front", "rear"] as const)
    .flatMap((wheel) => {
      const reading = observation[wheel];
      return reading === undefined
        ? [wheelOpen(wheel)]
        : [`${wheel} ${uncapital(said(check, reading, lengths))}`];
    })
    .join(", ");
}

function said(check: Check, reading: Reading, lengths: LengthUnit): string {
  const sent = sendable(reading, check);
  if (sent === null) return STILL_TO_MEASURE;
  const flag = check.measurement?.flags.find(({ id }) => sent.flags?.includes(id));
  if (flag !== undefined) return plain(flag.label);
  if (sent.measured !== undefined) return figures(check, sent.measured, lengths);
  return levelWords(check, sent.level ?? "");
}

function figures(check: Check, measured: Readonly<Record<string, number>>, lengths: LengthUnit): string {
  const shown = lengthsFor(check, lengths);
  const inputs = check.measurement?.inputs.filter(({ id }) => measured[id] !== undefined) ?? [];
  const units = new Set(inputs.map(({ unit }) => unit));
  const [only = ""] = units;
  const unit = units.size === 1 && only !== "count" ? ` ${only === "mm" ? shown : only}` : "";
  const bare = (id: string, unit: string) =>
    unit === "mm" ? bareLength(measured[id] ?? 0, shown) : figure(measured[id] ?? 0, 2);
  return `${inputs.map((input) => bare(input.id, input.unit)).join(" and ")}${unit}`;
}

/** What the answer made of a check: the level of a measurement, or that it lies on the line between two. */
export function foundBy(
  check: Check,
  findings: readonly ReportedFinding[],
  lengths: LengthUnit = "mm",
): string {
  return findings
    .filter((finding) => finding.check === check.id && finding.source === "measured")
    .map(({ position, level, derived, borderline }) => {
      const wheel = position === "front" || position === "rear" ? `${plain(position)}: ` : "";
      const value =
        derived === undefined ? "" : ` (${amount(derived.value, derived.unit, lengthsFor(check, lengths))})`;
      if (borderline === undefined) return `${wheel}${lowerUnless(wheel, levelWords(check, level))}${value}.`;
      const [better, worse] = borderline;
      return `${wheel}${betweenLevels(levelWords(check, better), levelWords(check, worse), value)}`;
    })
    .join(" ");
}

const lowerUnless = (first: string, text: string) => (first === "" ? text : uncapital(text));
