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
  datasets: Dataset[],
  plugins: SketchPlugin[],
): SketchChart {
  return new Chart(canvas, {
    type: "bar",
    data: { datasets },
    plugins,
    options: {
      responsive: false,
      maintainAspectRatio: false,
      animation: mayMove() ? { duration: SETTLE_MS, easing: "easeOutCubic" } : false,
      events: [],
      indexAxis: "y",
      layout: { padding: 0 },
      scales: {
        x: { type: "linear", display: false, min: 0, max: 1 },
        y: { type: "linear", display: false, min: 0, max: 1, reverse: true, offset: false },
      },
    },
  });
}

/** Fits a chart to its canvas' place on the page and to its axis. */
export function fitTo(chart: SketchChart, width: number, height: number, scale: Scale): void {
  if (chart.width !== width || chart.height !== height) {
    // While anything still moves, Chart.js would put the new size off to a frame that may never come.
    chart.stop();
    chart.resize(width, height);
  }
  const scales = chart.options.scales ?? {};
  Object.assign(scales.x ?? {}, { min: scale.min, max: scale.max });
  Object.assign(scales.y ?? {}, { min: 0, max: height });
}
