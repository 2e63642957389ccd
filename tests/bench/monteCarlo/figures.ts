import { selectPlaces } from "./quickselect.ts";

/** The figures of a margin by which two ways of working it out are compared. */
export interface Figures {
  readonly mean: number;
  readonly p10: number;
  readonly p90: number;
  readonly loss: number;
}

/** A margin this far below 0 is a loss: that much rounding leaves of a certain 0. */
const JUST = 1e-9;

/** Places of the quantiles among so many values. */
export function placesOf(count: number, probabilities: readonly number[]): readonly number[] {
  return probabilities.map((probability) => Math.floor(probability * count));
}

/** @param margins put in another order */
export function figuresOf(margins: Float64Array): Figures {
  let sum = 0;
  let losses = 0;
  for (let i = 0; i < margins.length; i++) {
    sum += margins[i]!;
    if (margins[i]! < -JUST) losses++;
  }
  const [low, high] = placesOf(margins.length, [0.1, 0.9]);
  selectPlaces(margins, [low!, high!]);
  return {
    mean: sum / margins.length,
    p10: margins[low!]!,
    p90: margins[high!]!,
    loss: losses / margins.length,
  };
}

/** Standard deviation, about the mean of the values. */
export function sdOf(values: Float64Array, mean: number): number {
  let square = 0;
  for (let i = 0; i < values.length; i++) square += (values[i]! - mean) ** 2;
  return Math.sqrt(square / values.length);
}

export const FIGURES = ["mean", "p10", "p90", "loss"] as const;

/** Errors of each figure: of amounts in standard deviations of the margin, of the chance as it is. */
export function errorsOf(
  told: Figures,
  truth: Figures,
  sd: number,
): Record<(typeof FIGURES)[number], number> {
  return {
    mean: (told.mean - truth.mean) / sd,
    p10: (told.p10 - truth.p10) / sd,
    p90: (told.p90 - truth.p90) / sd,
    loss: told.loss - truth.loss,
  };
}
