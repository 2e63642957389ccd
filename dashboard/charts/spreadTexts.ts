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
import type { Ray, SpreadTold } from "./spread.ts";
import { rayEnd, spreadMarks } from "./spread.ts";
import { meets, textBox } from "./textBox.ts";

/** What the rays mean, then the name of each point where it fits beside it, else its number, else nothing. */
export function spreadTexts(told: SpreadTold, plane: Plane, measure: Measure): readonly PlaneText[] {
  const rays = told.rays.flatMap((ray) => rayText(ray, plane, measure));
  const taken = [...rays.map((text) => textBox(text, measure)), ...spreadMarks(told.points, plane)];
  const names = told.points.flatMap(({ number, name, x, y }): PlaneText[] => {
    const at = { x: pixelX(plane, x.at), y: pixelY(plane, y.at) };
    for (const text of [`${number} ${name}`, String(number)]) {
      for (const one of besides(at, text)) {
        const box = textBox(one, measure);
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
  const { left, right } = textBox({ ...at, x: 0, y: 11 }, measure);
  return [{ ...at, x: Math.max(right - left, pixelX(plane, end.x) - 10), y: 11 }];
}

function inside({ left, right, top, bottom }: Box, { width, height }: Size): boolean {
  return left >= 0 && right <= width && top >= 0 && bottom <= height;
}
