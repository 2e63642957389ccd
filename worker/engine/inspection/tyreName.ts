import type { Millimetres } from "../quantity.ts";

/**
 * How a traditional marking writes the tyre's width.
 * decimal: 26 x 1.75; fraction: 26 x 1 3/8; fractions: 28 x 1 5/8 x 1 3/8; letter: 700 x 32C; metric: 700 x 32.
 */
export type MarkingStyle = "decimal" | "fraction" | "fractions" | "letter" | "metric";

/** One traditional name of a bead seat diameter. Several names share a nominal size without sharing a diameter. */
export interface TyreName {
  /** The nominal outer diameter in the name: 26 (inches) or 700 (mm). */
  readonly nominal: number;
  readonly style: MarkingStyle;
  /** Widths that the name is used with, in the name's unit; null is an open end. */
  readonly widthFrom: number | null;
  readonly widthTo: number | null;
  /** Rim letter of the metric names: the C of 700C. */
  readonly letter: string | null;
  /** Letters and figures behind the size, without points and dashes: EA3, S6. */
  readonly marks: readonly string[];
  /** Whether the name is also used without such a mark. */
  readonly unmarked: boolean;
  readonly diameterMm: Millimetres;
  /** What the size is, in a few words. */
  readonly reason: string;
  readonly source: string;
  readonly fromMemory: boolean;
}

/** The name as spoken: 26 in, 700. */
export function spokenName(nominal: number): string {
  return isMetric(nominal) ? String(nominal) : `${nominal} in`;
}

/** Three figures are millimetres (700), two are inches (26). */
export function isMetric(nominal: number): boolean {
  return nominal >= 100;
}
