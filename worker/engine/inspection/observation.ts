import type { CheckId, LevelId } from "./check.ts";

/** What was seen at one place: a judged level, a measured value, flags, or several of them (flags win, then the measurement). */
export interface Reading {
  readonly level?: LevelId | undefined;
  readonly measured?: Readonly<Record<string, number>> | undefined;
  readonly flags?: readonly string[] | undefined;
}

/** One reading for the whole bike (or both wheels), or front and rear apart. */
export type Observation =
  | Reading
  | { readonly front?: Reading | undefined; readonly rear?: Reading | undefined };

export type Observations = Readonly<Record<CheckId, Observation>>;

export function isPerWheel(observation: Observation): observation is { front?: Reading; rear?: Reading } {
  return "front" in observation || "rear" in observation;
}
