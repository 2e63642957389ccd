import type { Palette } from "./palette.ts";
import type { Scale } from "./scale.ts";

/** A row's part of the canvas, in pixels from its top. */
export interface Strip {
  readonly top: number;
  readonly bottom: number;
}

type Ink = CanvasRenderingContext2D;

/** Grey ground left of nought, lines at the ticks, a stronger line at nought. */
export function drawGround(
  ink: Ink,
  strips: readonly Strip[],
  { min, max, ticks }: Scale,
  x: (value: number) => number,
  palette: Palette,
): void {
  for (const { top, bottom } of strips) {
    if (min < 0) {
      ink.fillStyle = palette.lossGround;
      ink.fillRect(x(min), top, x(Math.min(0, max)) - x(min), bottom - top);
    }
    for (const tick of ticks) {
      const nought = tick === 0;
      upright(ink, x(tick), { top, bottom }, nought ? palette.edge : palette.grid, nought ? 1.5 : 1);
    }
  }
}

/** The goal: a dashed line through every row. */
export function drawGoal(ink: Ink, strips: readonly Strip[], at: number, palette: Palette): void {
  ink.save();
  ink.setLineDash([5, 4]);
  for (const strip of strips) upright(ink, at, strip, palette.goal, 1.5);
  ink.restore();
}

export function upright(ink: Ink, at: number, { top, bottom }: Strip, colour: string, width: number): void {
  ink.strokeStyle = colour;
  ink.lineWidth = width;
  ink.beginPath();
  ink.moveTo(at, top);
  ink.lineTo(at, bottom);
  ink.stroke();
}

/** Diagonal hatching between two x positions, inside the current clip. */
export function hatch(ink: Ink, left: number, right: number, { top, bottom }: Strip, palette: Palette): void {
  const height = bottom - top;
  ink.save();
  ink.beginPath();
  ink.rect(left, top, right - left, height);
  ink.clip();
  ink.globalAlpha = 0.75;
  ink.strokeStyle = palette.ink;
  ink.lineWidth = 1.6;
  ink.beginPath();
  for (let at = left - height; at < right; at += 6) {
    ink.moveTo(at, bottom);
    ink.lineTo(at + height, top);
  }
  ink.stroke();
  ink.restore();
}

/** The head of a bar that runs out of the axis. */
export function arrowHead(ink: Ink, at: number, middle: number, direction: -1 | 1, colour: string): void {
  ink.save();
  ink.setLineDash([]);
  ink.strokeStyle = colour;
  ink.lineWidth = 2.5;
  ink.lineCap = "round";
  ink.lineJoin = "round";
  ink.beginPath();
  ink.moveTo(at - direction * 6, middle - 10);
  ink.lineTo(at, middle);
  ink.lineTo(at - direction * 6, middle + 10);
  ink.stroke();
  ink.restore();
}

/** A sign with a rim of the ground around it, so that it stands clear of bar and line. */
export function drawSign(
  ink: Ink,
  path: string,
  x: number,
  y: number,
  colour: string,
  palette: Palette,
): void {
  const shape = new Path2D(path);
  ink.save();
  ink.translate(x, y);
  ink.setLineDash([]);
  ink.lineJoin = "round";
  ink.lineWidth = 5;
  ink.strokeStyle = palette.surface;
  ink.stroke(shape);
  ink.fillStyle = colour;
  ink.fill(shape);
  ink.restore();
}
