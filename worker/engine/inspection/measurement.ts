import { type Attributes, holds } from "../bicycle.ts";
import type { LevelId, Measurement, Threshold } from "./check.ts";
import { type DerivedQuantity, derivedQuantity } from "./derivedQuantity.ts";
import { requirePossible } from "./measuredInputs.ts";
import { borderline, levelAt } from "./threshold.ts";

/** A reading turned into a level. */
export interface MeasuredLevel extends DerivedQuantity {
  readonly level: LevelId;
  readonly unit: string;
  /** Within one reading error of the limit between these two, milder first. */
  readonly borderline: readonly [LevelId, LevelId] | null;
}

/**
 * The level of a measured check: inputs -> derived quantity -> thresholds of this bike.
 * @param measurement inputs, derivation and thresholds (ascending, without gaps)
 * @param measured value by input id, in the input's unit
 * @param attributes choose the thresholds (disc pads are thinner than rim pads)
 * @param rankOf place of a level from best (0) to worst
 * @throws DomainError `impossible-measurement` or `unknown-id`, with a pointer relative to the reading ("measured/left")
 */
export function measure(
  measurement: Measurement,
  measured: Readonly<Record<string, number>>,
  attributes: Attributes,
  rankOf: (level: LevelId) => number,
): MeasuredLevel {
  requirePossible(measurement.inputs, measured);
  const { value, text } = derivedQuantity(measurement, measured);
  const { derivation, readingError, unit } = measurement;
  if (derivation.kind === "bead-seat") {
    const listed = Object.entries(derivation.supply).find(([, diameters]) => diameters.includes(value));
    const level = listed?.[0] ?? derivation.unknownLevel;
    return {
      value,
      unit,
      level,
      borderline: null,
      text: listed === undefined ? `${text}, in no list` : text,
    };
  }
  const thresholds = thresholdsFor(measurement, attributes);
  return {
    value,
    unit,
    text,
    level: levelAt(thresholds, value),
    borderline: borderline(thresholds, value, readingError, rankOf),
  };
}

function thresholdsFor(measurement: Measurement, attributes: Attributes): readonly Threshold[] {
  const special = measurement.thresholdsWhen.find(({ when }) => holds(when, attributes));
  return special?.thresholds ?? measurement.thresholds;
}
