import type { MeasuredInput, Measurement } from "../api/types.ts";
import type { Readings } from "../drawings/derived.ts";

/** Steps in mm, widest first: half a millimetre, or finer where the reading is. */
const STEPS_MM = [0.5, 0.1, 0.05] as const;

/**
 * How far one press of a button moves a reading, in its own unit: the widest step that is no coarser than a reading error.
 * Years and counts go by one; a bead seat is one of a list of sizes and does not step.
 */
export function stepFor(
  input: MeasuredInput,
  { derivation, readingError, unit }: Measurement,
): number | null {
  if (derivation.kind === "bead-seat") return null;
  if (input.unit !== "mm") return 1;
  // The chain's reading error is in per cent; its rule is read to half a millimetre.
  if (unit !== "mm") return STEPS_MM[0];
  return STEPS_MM.find((step) => step <= readingError) ?? STEPS_MM.at(-1)!;
}

/**
 * Where stepping starts while nothing is entered: at a new chain's length, at the reading beside it, at the first limit,
 * else in the middle of what is possible.
 */
export function startFor(input: MeasuredInput, measurement: Measurement, readings: Readings): number {
  const { derivation, inputs, thresholds } = measurement;
  if (derivation.kind === "elongation") return derivation.pitches * derivation.pitch;
  if (derivation.kind === "value") return thresholds.find(({ from }) => (from ?? 0) > 0)?.from ?? input.min;
  const beside = inputs.find(
    ({ id, optional }) => id !== input.id && !optional && readings[id] !== undefined,
  );
  return beside !== undefined && !input.optional
    ? readings[beside.id]!
    : Math.round((input.min + input.max) / 2);
}
