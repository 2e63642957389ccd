import { type Box, NARROW, type Plane, type Point, pixelX, pixelY, type Size } from "./plane.ts";
import { type Scale, scaleOver } from "./scale.ts";
import { signBox } from "./textBox.ts";

/** A figure with the ends of its range; low and high are null where it has none. */
export interface Ranged {
  readonly at: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** One find: two figures, each with its range. */
export interface SpreadPoint {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly x: Ranged;
  readonly y: Ranged;
  readonly sign: string;
  readonly token: string;
  readonly filled: boolean;
  readonly hatched: boolean;
  /** Its other courses, drawn small and pale. */
  readonly others: readonly (Point & { readonly sign: string; readonly token: string })[];
}

/** A line through the origin: the same rate all along. */
export interface Ray {
  readonly slope: number;
  readonly kind: "goal" | "plain" | "edge";
  /** What it means; the shorter where there is little room; empty: nothing is written. */
  readonly text: readonly [long: string, short: string];
}

export interface SpreadTold {
  readonly points: readonly SpreadPoint[];
  readonly rays: readonly Ray[];
  /** Below the ray of this slope the ground is grey. */
  readonly ground: number;
  /** Whether the upward figure can be less than nought. */
  readonly belowNought: boolean;
}

/** Ranges up to this place in their order are on the axes whole; those that run on further are cut, for they would squeeze all else. */
const WHOLE = 0.7;

/** Axes on which every point stands, and most of the ranges. */
export function spreadPlane({ points, belowNought }: SpreadTold, { width, height }: Size): Plane {
  const narrow = width < NARROW;
  const ends = (axis: "x" | "y", side: "low" | "high") =>
    points.map((point) => point[axis][side] ?? point[axis].at);
  const most = (axis: "x" | "y") =>
    Math.max(1, ...points.map((point) => point[axis].at * 1.12), quantile(ends(axis, "high"), WHOLE));
  const high = { x: most("x"), y: most("y") };
  const low = belowNought
    ? Math.min(
        -0.12 * high.y,
        ...points.map((point) => point.y.at * 1.12),
        -quantile(
          ends("y", "low").map((value) => -value),
          WHOLE,
        ),
      )
    : 0;
  return {
    width,
    height,
    x: scaleOver(0, high.x, narrow ? 5 : 9),
    y: scaleOver(low, high.y, narrow ? 6 : 7),
  };
}

/** The figure that a share of them does not surpass, by the nearest in their order. */
function quantile(figures: readonly number[], share: number): number {
  return [...figures].sort((a, b) => a - b)[Math.round(share * (figures.length - 1))] ?? 0;
}

/** Where a ray through the origin leaves the plot, in values. */
export function rayEnd({ x, y }: { readonly x: Scale; readonly y: Scale }, slope: number): Point {
  return slope * x.max <= y.max ? { x: x.max, y: slope * x.max } : { x: y.max / slope, y: y.max };
}

/** What glides: the point and the ends of its two ranges, cut to the plot. */
export function spreadAnchors(points: readonly SpreadPoint[], { x, y }: Plane): readonly Point[] {
  const cut = (value: number, { min, max }: Scale) => Math.min(max, Math.max(min, value));
  return points.flatMap((point) => [
    { x: point.x.at, y: point.y.at },
    { x: cut(point.x.low ?? point.x.at, x), y: point.y.at },
    { x: cut(point.x.high ?? point.x.at, x), y: point.y.at },
    { x: point.x.at, y: cut(point.y.low ?? point.y.at, y) },
    { x: point.x.at, y: cut(point.y.high ?? point.y.at, y) },
  ]);
}

export function spreadMarks(points: readonly SpreadPoint[], plane: Plane): readonly Box[] {
  return points.map(({ x, y }) => signBox({ x: pixelX(plane, x.at), y: pixelY(plane, y.at) }));
}
