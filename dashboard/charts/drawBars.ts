import { type Bar, type BarsSettings, type Row, rowsOf, THICK } from "./bars.ts";
import type { SketchChart } from "./chart.ts";
import type { Palette } from "./palette.ts";
import { arrowHead, drawGoal, drawGround, drawSign, hatch, type Strip, upright } from "./pen.ts";

const toPixels = (chart: SketchChart) => (value: number) => chart.scales.x?.getPixelForValue(value) ?? 0;

export function drawUnder(chart: SketchChart, settings: BarsSettings, palette: Palette): void {
  const x = toPixels(chart);
  drawGround(chart.ctx, settings.strips, settings.scale, x, palette);
  if (settings.dotted !== null) drawDotted(chart.ctx, settings.strips, x(settings.dotted), palette);
}

function drawDotted(
  ink: CanvasRenderingContext2D,
  strips: readonly Strip[],
  at: number,
  palette: Palette,
): void {
  ink.save();
  ink.setLineDash([1, 4]);
  ink.lineCap = "round";
  for (const strip of strips) upright(ink, at, strip, palette.ink, 1.8);
  ink.restore();
}

export function drawOver(chart: SketchChart, settings: BarsSettings, palette: Palette): void {
  const ink = chart.ctx;
  const x = toPixels(chart);
  const rows = rowsOf(settings);
  const bars = chart.getDatasetMeta(0).data;
  rows.forEach((row, i) => {
    const element = bars[i];
    if (element === undefined) return;
    // Where the bar stands now, on its way to the new answer.
    const { x: right, base: left } = element.getProps(["x", "base"]) as { x: number; base: number };
    drawBand(ink, row, Math.min(left, right), Math.max(left, right), settings, x, palette);
  });
  if (settings.goal !== null) drawGoal(ink, settings.strips, x(settings.goal), palette);
  const marks = chart.getDatasetMeta(1).data;
  rows.forEach(({ bar, y }, i) => {
    const mark = marks[i];
    if (mark === undefined) return;
    if (bar.sign === null) upright(ink, mark.x, { top: y - 11, bottom: y + 11 }, palette.ink, 3);
    else drawSign(ink, bar.sign, mark.x, y, palette.of(bar.token), palette);
  });
  for (const row of rows) drawDots(ink, row, settings, x, palette);
  drawActive(ink, settings, palette);
}

const DOT = 4.5;

/** Single prices in a lane of their own under the bar; one beyond the axis becomes an arrow head. */
function drawDots(
  ink: CanvasRenderingContext2D,
  { bar, y }: Row,
  { scale }: BarsSettings,
  x: (value: number) => number,
  palette: Palette,
): void {
  const lane = y + THICK / 2 + 2.2 * DOT;
  for (const { value, open, ringed } of bar.dots ?? []) {
    if (value > scale.max) {
      arrowHead(ink, x(scale.max) - 2, lane, 1, palette.ink);
      continue;
    }
    const at = x(value);
    disc(ink, at, lane, DOT, palette.surface, palette.ink);
    if (!open) disc(ink, at, lane, DOT - 0.6, palette.ink, palette.ink);
    if (ringed) disc(ink, at, lane, DOT + 4, null, palette.ink);
  }
}

function disc(
  ink: CanvasRenderingContext2D,
  x: number,
  y: number,
  radius: number,
  fill: string | null,
  stroke: string,
): void {
  ink.save();
  ink.setLineDash([]);
  ink.beginPath();
  ink.arc(x, y, radius, 0, Math.PI * 2);
  if (fill !== null) {
    ink.fillStyle = fill;
    ink.fill();
  }
  ink.strokeStyle = stroke;
  ink.lineWidth = 1.6;
  ink.stroke();
  ink.restore();
}

function drawBand(
  ink: CanvasRenderingContext2D,
  { bar, y }: Row,
  left: number,
  right: number,
  { scale, goal, losses }: BarsSettings,
  x: (value: number) => number,
  palette: Palette,
): void {
  const colour = palette.of(bar.token);
  const strip = { top: y - THICK / 2, bottom: y + THICK / 2 };
  const outline = new Path2D();
  outline.roundRect(left, strip.top, Math.max(right - left, 2), THICK, 3);
  ink.save();
  ink.fillStyle = bar.open ? palette.surface : colour;
  ink.globalAlpha = bar.open ? 1 : palette.band;
  ink.fill(outline);
  ink.save();
  ink.clip(outline);
  const [from, to] = fuller(bar, goal, x, left, right);
  if (!bar.open && to > from) {
    ink.globalAlpha = palette.bandStrong;
    ink.fillRect(from, strip.top, to - from, THICK);
  }
  ink.globalAlpha = 1;
  if (bar.hatched === true) hatch(ink, left, right, strip, palette);
  if (losses && left < x(0)) hatch(ink, left, Math.min(right, x(0)), strip, palette);
  ink.restore();
  ink.globalAlpha = 1;
  ink.strokeStyle = colour;
  ink.lineWidth = 1.5;
  ink.setLineDash(bar.open ? [4, 3] : []);
  ink.stroke(outline);
  ink.restore();
  if (bar.low < scale.min) arrowHead(ink, left + 2, y, -1, colour);
  if (bar.high > scale.max) arrowHead(ink, right - 2, y, 1, colour);
}

/** The part of a bar in fuller colour, in pixels. */
function fuller(
  { middle }: Bar,
  goal: number | null,
  x: (value: number) => number,
  left: number,
  right: number,
): readonly [number, number] {
  if (middle !== undefined) return [x(middle[0]), x(middle[1])];
  return goal === null ? [0, 0] : [Math.max(left, x(goal)), right];
}

function drawActive(
  ink: CanvasRenderingContext2D,
  { active, strips, width }: BarsSettings,
  palette: Palette,
): void {
  const strip = active === null ? undefined : strips[active];
  if (strip === undefined) return;
  ink.save();
  ink.strokeStyle = palette.edge;
  ink.lineWidth = 1.5;
  ink.beginPath();
  ink.roundRect(1, strip.top + 2, width - 2, strip.bottom - strip.top - 4, 6);
  ink.stroke();
  ink.restore();
}
