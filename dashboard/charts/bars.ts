import type { Strip } from "./pen.ts";
import type { Scale } from "./scale.ts";

/** One row: a range, what stands at its middle, and how it is drawn. */
export interface Bar {
  readonly low: number;
  readonly high: number;
  readonly at: number;
  /** Path of the sign at the middle; null draws an upright tick. */
  readonly sign: string | null;
  /** Token of the colour. */
  readonly token: string;
  /** Dashed outline without filling: hardly looked at. */
  readonly open: boolean;
  /** A fuller part of its own (the middle half of a price); else what lies beyond the goal is fuller. */
  readonly middle?: readonly [number, number];
  /** Hatched throughout: a step that takes off. */
  readonly hatched?: boolean;
  /** Single prices, drawn below the bar. */
  readonly dots?: readonly Dot[];
}

/** A single price beside a range. */
export interface Dot {
  readonly value: number;
  /** A ring in place of a disc. */
  readonly open: boolean;
  /** With a second ring around it. */
  readonly ringed: boolean;
}

export interface BarsSettings {
  readonly bars: readonly (Bar | null)[];
  readonly strips: readonly Strip[];
  readonly scale: Scale;
  /** Value of the dashed line; null draws none. */
  readonly goal: number | null;
  /** Value of a dotted line; null draws none. */
  readonly dotted: number | null;
  /** Whether what lies below nought is hatched as a loss. */
  readonly losses: boolean;
  readonly active: number | null;
  readonly width: number;
  readonly height: number;
}

/** Thickness of a bar, in pixels. */
export const THICK = 14;

/** A row that has figures, cut to the axis. */
export interface Row {
  readonly bar: Bar;
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

/** The rows that have figures, each cut to the axis. */
export function rowsOf({ bars, strips, scale }: BarsSettings): Row[] {
  return bars.flatMap((bar, i) => {
    const strip = strips[i];
    if (bar === null || strip === undefined) return [];
    const low = Math.max(bar.low, scale.min);
    const high = Math.min(bar.high, scale.max);
    return [{ bar, y: (strip.top + strip.bottom) / 2, low, high }];
  });
}
