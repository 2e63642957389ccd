import {
  type Box,
  type Measure,
  NARROW,
  type Plane,
  type PlaneText,
  type Point,
  pixelX,
  pixelY,
  type Size,
} from "./plane.ts";
import { type Scale, scaleOver } from "./scale.ts";

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

const SIGN = 10;

export function spreadMarks(points: readonly SpreadPoint[], plane: Plane): readonly Box[] {
  return points.map(({ x, y }) => around(pixelX(plane, x.at), pixelY(plane, y.at), SIGN, SIGN));
}

const LINE = 17;

/** What the rays mean, then the name of each point where it fits beside it, else its number, else nothing. */
export function spreadTexts(told: SpreadTold, plane: Plane, measure: Measure): readonly PlaneText[] {
  const rays = told.rays.flatMap((ray) => rayText(ray, plane, measure));
  const taken = [
    ...rays.map((text) => boxOf(text, measure(text.text) + (text.kind === "flag" ? FLAG : 0))),
    ...spreadMarks(told.points, plane),
  ];
  const names = told.points.flatMap(({ number, name, x, y }): PlaneText[] => {
    const at = { x: pixelX(plane, x.at), y: pixelY(plane, y.at) };
    for (const text of [`${number} ${name}`, String(number)]) {
      const width = measure(text);
      for (const one of besides(at, text)) {
        const box = boxOf(one, width);
        if (!inside(box, plane) || taken.some((other) => meets(box, other))) continue;
        taken.push(box);
        return [one];
      }
    }
    return [];
  });
  return [...rays, ...names];
}

/** Places beside a sign, off the cross of its ranges. */
function besides({ x, y }: Point, text: string): readonly PlaneText[] {
  const right = { text, kind: "strong", x: x + 12, align: "left" } as const;
  const left = { text, kind: "strong", x: x - 12, align: "right" } as const;
  return [
    { ...right, y: y - 12 },
    { ...left, y: y - 12 },
    { ...right, y: y + 12 },
    { ...left, y: y + 12 },
    { ...right, y: y - 26 },
    { ...left, y: y + 26 },
    { ...left, y: y - 26 },
    { ...right, y: y + 26 },
  ];
}

/** At the end of its line: the goal's flag above it, what others mean below or left of it, clear of the line. */
function rayText({ slope, kind, text: texts }: Ray, plane: Plane, measure: Measure): PlaneText[] {
  const text = texts[plane.width < NARROW ? 1 : 0];
  if (text === "") return [];
  const end = rayEnd(plane, slope);
  const flag = kind === "goal";
  const at = { text, kind: flag ? ("flag" as const) : ("plain" as const), align: "right" as const };
  if (end.x >= plane.x.max - 1e-9) {
    const line = pixelY(plane, end.y);
    // Below a rising line a text clears it at its left end.
    const clear = pixelY(plane, end.y * (1 - measure(text) / plane.width)) + 13;
    const y = flag ? Math.max(11, line - 12) : Math.min(plane.height - 10, clear);
    return [{ ...at, x: plane.width, y }];
  }
  const room = measure(text) + (flag ? FLAG : 0);
  return [{ ...at, x: Math.max(room, pixelX(plane, end.x) - 10), y: 11 }];
}

/** What a flag is wider than its text. */
const FLAG = 20;

function boxOf({ x, y, align }: PlaneText, width: number): Box {
  const left = align === "left" ? x : align === "right" ? x - width : x - width / 2;
  return { left, right: left + width, top: y - LINE / 2, bottom: y + LINE / 2 };
}

function around(x: number, y: number, across: number, up: number): Box {
  return { left: x - across, right: x + across, top: y - up, bottom: y + up };
}

function meets(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function inside({ left, right, top, bottom }: Box, { width, height }: Size): boolean {
  return left >= 0 && right <= width && top >= 0 && bottom <= height;
}
