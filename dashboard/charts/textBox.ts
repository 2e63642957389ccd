import type { Box, Measure, PlaneText, Point } from "./plane.ts";

/** Height of a line of text, and what a flag is wider and higher than its text, in pixels. */
const LINE = 17;
const FLAG = { width: 20, height: 5 };

/** Where a text stands. */
export function textBox({ text, x, y, align, kind }: PlaneText, measure: Measure): Box {
  const flag = kind === "flag" ? FLAG : { width: 0, height: 0 };
  const width = measure(text) + flag.width;
  const half = (LINE + flag.height) / 2;
  const left = align === "left" ? x : align === "right" ? x - width : x - width / 2;
  return { left, right: left + width, top: y - half, bottom: y + half };
}

export function meets(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Half of what a sign takes either way, its edge included. */
const SIGN = 10;

/** Where a sign stands, about its place. */
export function signBox({ x, y }: Point): Box {
  return { left: x - SIGN, right: x + SIGN, top: y - SIGN, bottom: y + SIGN };
}
