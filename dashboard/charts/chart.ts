import {
  BarController,
  BarElement,
  Chart,
  type ChartConfiguration,
  LinearScale,
  type Plugin,
  PointElement,
  ScatterController,
} from "chart.js";
import type { Scale } from "./scale.ts";

Chart.register(BarController, BarElement, ScatterController, PointElement, LinearScale);

export type Dataset = ChartConfiguration<"bar" | "scatter">["data"]["datasets"][number];
export type SketchChart = Chart<"bar" | "scatter">;
export type SketchPlugin = Plugin<"bar" | "scatter">;

/** Place of a chart on the page, in pixels, and its axis. */
export interface SketchSize {
  readonly width: number;
  readonly height: number;
  readonly scale: Scale;
}

export const SETTLE_MS = 240;

/** Whether bars may glide to a new answer. */
export function mayMove(): boolean {
  return !matchMedia("(prefers-reduced-motion: reduce)").matches;
}

/**
 * A chart whose rows stand where the page says: x is the value, y the pixel from the top of the canvas.
 * Axes, names and figures are the page's; the plugins draw everything on the canvas.
 */
export function createSketch(
  canvas: HTMLCanvasElement,
  { width, height, scale }: SketchSize,
  datasets: Dataset[],
  plugins: SketchPlugin[],
): SketchChart {
  // Chart.js takes the size from the canvas: so it is drawn once, not anew for its size.
  Object.assign(canvas, { width: Math.round(width), height: Math.round(height) });
  const chart = new Chart<"bar" | "scatter">(canvas, {
    type: "bar",
    data: { datasets },
    plugins,
    options: {
      responsive: false,
      maintainAspectRatio: false,
      animation: false,
      events: [],
      indexAxis: "y",
      layout: { padding: 0 },
      scales: {
        x: { type: "linear", display: false, min: scale.min, max: scale.max },
        y: { type: "linear", display: false, min: 0, max: height, reverse: true, offset: false },
      },
    },
  });
  // What is drawn first stands at once; what changes after that may glide.
  if (mayMove()) chart.options.animation = { duration: SETTLE_MS, easing: "easeOutCubic" };
  return chart;
}

/** Fits a chart to its canvas' place on the page and to its axis. */
export function fitTo(chart: SketchChart, { width: wide, height: high, scale }: SketchSize): void {
  const [width, height] = [Math.round(wide), Math.round(high)];
  if (chart.width !== width || chart.height !== height) {
    // While anything still moves, Chart.js would put the new size off to a frame that may never come.
    chart.stop();
    chart.resize(width, height);
  }
  const scales = chart.options.scales ?? {};
  Object.assign(scales.x ?? {}, { min: scale.min, max: scale.max });
  Object.assign(scales.y ?? {}, { min: 0, max: height });
}
