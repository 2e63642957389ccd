import type { Palette } from "./palette.ts";
import { hatch } from "./pen.ts";
import type { Point } from "./plane.ts";

type Ink = CanvasRenderingContext2D;

/** How a sign is drawn: filled or outlined, hatched where it loses money, pale where it only stands by. */
export interface SignStyle {
  readonly path: string;
  readonly token: string;
  readonly filled: boolean;
  readonly hatched: boolean;
  readonly pale?: boolean;
}

/** A sign with a rim of the ground around it. */
export function paintSign(ink: Ink, style: SignStyle, x: number, y: number, palette: Palette): void {
  const shape = new Path2D(style.path);
  const colour = palette.of(style.token);
  ink.save();
  ink.setLineDash([]);
  ink.translate(x, y);
  ink.lineJoin = "round";
  if (style.pale === true) {
    ink.scale(0.62, 0.62);
    ink.globalAlpha = 0.6;
  }
  ink.lineWidth = 5;
  ink.strokeStyle = palette.surface;
  ink.stroke(shape);
  ink.fillStyle = style.filled ? colour : palette.surface;
  ink.fill(shape);
  if (style.hatched && !style.filled) {
    ink.save();
    ink.clip(shape);
    hatch(ink, -9, 9, { top: -9, bottom: 9 }, palette);
    ink.restore();
  }
  if (!style.filled) {
    ink.strokeStyle = colour;
    ink.lineWidth = 2;
    ink.stroke(shape);
  }
  ink.restore();
}

/** A ring around the mark that is told about. */
export function ring(ink: Ink, x: number, y: number, palette: Palette): void {
  ink.save();
  ink.setLineDash([]);
  ink.beginPath();
  ink.arc(x, y, 14, 0, Math.PI * 2);
  ink.strokeStyle = palette.ink;
  ink.lineWidth = 1.8;
  ink.stroke();
  ink.restore();
}

/**
 * A range as a line with a cross stroke at either end; an end beyond the axis gets an arrow head in place of the stroke.
 * @param cut whether the low and the high end are beyond
 */
export function whisker(
  ink: Ink,
  from: Point,
  to: Point,
  colour: string,
  cut: readonly [boolean, boolean] = [false, false],
): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 1) return;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  ink.save();
  ink.setLineDash([]);
  ink.strokeStyle = colour;
  ink.lineWidth = 1.5;
  ink.lineJoin = "round";
  ink.beginPath();
  ink.moveTo(from.x, from.y);
  ink.lineTo(to.x, to.y);
  end(ink, from, { x: -along.x, y: -along.y }, cut[0]);
  end(ink, to, along, cut[1]);
  ink.stroke();
  ink.restore();
}

function end(ink: Ink, at: Point, out: Point, arrow: boolean): void {
  const back = arrow ? 5 : 0;
  const tip = { x: at.x - out.x * back, y: at.y - out.y * back };
  ink.moveTo(tip.x + out.y * 4, tip.y - out.x * 4);
  if (arrow) ink.lineTo(at.x, at.y);
  ink.lineTo(tip.x - out.y * 4, tip.y + out.x * 4);
}

/** A straight line between two places. */
export function stroke(
  ink: Ink,
  from: Point,
  to: Point,
  colour: string,
  width: number,
  dash: readonly number[] = [],
): void {
  ink.save();
  ink.setLineDash([...dash]);
  ink.strokeStyle = colour;
  ink.lineWidth = width;
  ink.beginPath();
  ink.moveTo(from.x, from.y);
  ink.lineTo(to.x, to.y);
  ink.stroke();
  ink.restore();
}
