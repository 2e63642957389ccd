import { createSketch, fitTo, type SketchChart, type SketchPlugin } from "./chart.ts";
import type { DotsSettings } from "./dots.ts";
import type { Drawn } from "./drawn.ts";
import { type Palette, paletteOf } from "./palette.ts";
import { drawGround, drawSign, upright } from "./pen.ts";
import { dotWidth, stackDots } from "./stackDots.ts";

/** Pixels across a dot, its gap included. A narrower one could not show its hatching. */
const WIDEST = 13.5;
const NARROWEST = 8.5;

interface PlacedDot {
  readonly x: number;
  readonly y: number;
  readonly row: number;
  readonly loses: boolean;
}

/** Twenty dots a course, each 1 outcome in 20, on one axis; those that lose are hatched. */
export function createDotsDrawing(canvas: HTMLCanvasElement): Drawn<DotsSettings> {
  let now: DotsSettings | null = null;
  let placed: { readonly dots: readonly PlacedDot[]; readonly across: number } = { dots: [], across: WIDEST };
  const plugin: SketchPlugin = {
    id: "dots",
    beforeDatasetsDraw(chart) {
      if (now === null) return;
      const palette = paletteOf(canvas);
      const x = (value: number) => chart.scales.x?.getPixelForValue(value) ?? 0;
      drawGround(chart.ctx, now.strips, now.scale, x, palette);
      drawFloors(chart.ctx, now, palette);
    },
    afterDatasetsDraw(chart) {
      if (now === null) return;
      const palette = paletteOf(canvas);
      const points = chart.getDatasetMeta(0).data;
      placed.dots.forEach((dot, i) => {
        const point = points[i];
        const token = now?.rows[dot.row]?.token;
        if (point === undefined || token === undefined) return;
        drawDot(chart.ctx, point.x, point.y, placed.across / 2 - 0.8, palette.of(token), dot.loses, palette);
      });
      now.rows.forEach(({ single, token }, i) => {
        const strip = now?.strips[i];
        if (single === null || strip === undefined) return;
        const x = chart.scales.x?.getPixelForValue(single.at) ?? 0;
        drawSign(chart.ctx, single.sign, x, strip.bottom - 14, palette.of(token), palette);
      });
    },
  };
  let chart: SketchChart | null = null;
  return {
    show(settings, glide) {
      now = settings;
      placed = place(settings);
      const { min, max } = settings.scale;
      const value = (x: number) => min + (x / settings.width) * (max - min);
      const data = placed.dots.map(({ x, y }) => ({ x: value(x), y }));
      if (chart === null) {
        chart = createSketch(canvas, settings, [{ type: "scatter", pointRadius: 0, data }], [plugin]);
        return;
      }
      fitTo(chart, settings);
      const dataset = chart.data.datasets[0];
      if (dataset !== undefined) dataset.data = data;
      chart.update(glide ? undefined : "none");
    },
    destroy: () => chart?.destroy(),
  };
}

function place({ rows, strips, scale, width }: DotsSettings): { dots: PlacedDot[]; across: number } {
  const x = (value: number) => ((value - scale.min) / (scale.max - scale.min)) * width;
  const height = Math.min(...strips.map(({ top, bottom }) => bottom - top)) - 4;
  const across = dotWidth(
    rows.map(({ values }) => values),
    x,
    height,
    Math.min(WIDEST, Math.max(NARROWEST, width / 32)),
    NARROWEST,
  );
  const most = Math.floor(height / across);
  const dots = rows.flatMap(({ values }, row) => {
    const floor = (strips[row]?.bottom ?? 0) - 1.5;
    return stackDots(values, x, across, most).map((dot) => ({
      x: dot.x,
      y: floor - (dot.level + 0.5) * across,
      row,
      loses: dot.value < 0,
    }));
  });
  return { dots, across };
}

function drawFloors(
  ink: CanvasRenderingContext2D,
  { strips, active, width }: DotsSettings,
  palette: Palette,
): void {
  strips.forEach(({ top, bottom }, i) => {
    ink.strokeStyle = palette.edge;
    ink.lineWidth = 1;
    ink.beginPath();
    ink.moveTo(0, bottom - 0.5);
    ink.lineTo(width, bottom - 0.5);
    ink.stroke();
    if (i === active) {
      for (const at of [1, width - 1]) upright(ink, at, { top, bottom }, palette.edge, 2);
    }
  });
}

function drawDot(
  ink: CanvasRenderingContext2D,
  x: number,
  y: number,
  radius: number,
  colour: string,
  loses: boolean,
  palette: Palette,
): void {
  const circle = new Path2D();
  const inner = loses ? radius - 0.8 : radius;
  circle.arc(x, y, inner, 0, Math.PI * 2);
  if (!loses) {
    ink.fillStyle = colour;
    ink.fill(circle);
    return;
  }
  strokes(ink, circle, x, y, inner, palette);
  ink.strokeStyle = colour;
  ink.lineWidth = 1.6;
  ink.stroke(circle);
}

/** Hatching that passes through the middle of a dot, however small it is. */
function strokes(
  ink: CanvasRenderingContext2D,
  circle: Path2D,
  x: number,
  y: number,
  radius: number,
  palette: Palette,
): void {
  const apart = Math.max(4, radius);
  ink.save();
  ink.clip(circle);
  ink.globalAlpha = 0.75;
  ink.strokeStyle = palette.ink;
  ink.lineWidth = 1.4;
  ink.beginPath();
  for (const shift of [-apart, 0, apart]) {
    ink.moveTo(x + shift - radius, y + radius);
    ink.lineTo(x + shift + radius, y - radius);
  }
  ink.stroke();
  ink.restore();
}
