import type { Palette } from "./palette.ts";
import type { Scale } from "./scale.ts";

/** Plots narrower than this are a phone's, in pixels. */
export const NARROW = 480;

/** A place by its two values, or by its two pixels. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels from the top left corner of the plot. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Two axes over a plot of a size in pixels. */
export interface Plane extends Size {
  readonly x: Scale;
  readonly y: Scale;
}

/** A text over the plot. */
export interface PlaneText {
  readonly text: string;
  /** Pixels; y is the middle of the line. */
  readonly x: number;
  readonly y: number;
  readonly align: "left" | "center" | "right";
  /** flag: the goal's; strong: a number or name of a mark; plain: what a line means. */
  readonly kind: "flag" | "strong" | "plain";
}

/** What a painter draws with: where its anchors stand now, on their way to the new answer. */
export interface Pen {
  readonly ink: CanvasRenderingContext2D;
  readonly at: readonly Point[];
  readonly palette: Palette;
  /** The mark that is told about. */
  readonly active: number | null;
}

/** A chart of two axes at one size: what glides, how it is drawn, where its marks can be hit, and its texts. */
export interface Scene {
  readonly plane: Plane;
  /** Names of the marks in order: only the same marks glide. */
  readonly order: string;
  /** Values that glide to a new answer. */
  readonly anchors: readonly Point[];
  readonly paint: (pen: Pen) => void;
  readonly marks: readonly Box[];
  readonly texts: readonly PlaneText[];
}

/** Width of a text in pixels, as the plot writes it. */
export type Measure = (text: string) => number;

export function pixelX({ x, width }: Plane, value: number): number {
  return ((value - x.min) / (x.max - x.min)) * width;
}

export function pixelY({ y, height }: Plane, value: number): number {
  return height - ((value - y.min) / (y.max - y.min)) * height;
}

/** The mark at a place: one that holds it, else the one nearest to it within `reach` pixels. */
export function markAt(marks: readonly Box[], { x, y }: Point, reach = 22): number | null {
  let best: number | null = null;
  let least = reach;
  marks.forEach((box, i) => {
    const dx = Math.max(box.left - x, 0, x - box.right);
    const dy = Math.max(box.top - y, 0, y - box.bottom);
    const away = Math.hypot(dx, dy);
    if (away < least) {
      best = i;
      least = away;
    }
  });
  return best;
}
