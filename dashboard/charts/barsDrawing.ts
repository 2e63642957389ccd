import { type BarsSettings, type Row, rowsOf, THICK } from "./bars.ts";
import { createSketch, type Dataset, fitTo, type SketchChart, type SketchPlugin } from "./chart.ts";
import { drawOver, drawUnder } from "./drawBars.ts";
import type { Drawn } from "./drawn.ts";
import { paletteOf } from "./palette.ts";

/** Ranges as outlined bars with a sign at their long-run figure, one a row, on one axis. */
export function createBarsDrawing(canvas: HTMLCanvasElement): Drawn<BarsSettings> {
  let now: BarsSettings | null = null;
  const plugin: SketchPlugin = {
    id: "bars",
    beforeDatasetsDraw(chart) {
      if (now !== null) drawUnder(chart, now, paletteOf(canvas));
    },
    afterDatasetsDraw(chart) {
      if (now !== null) drawOver(chart, now, paletteOf(canvas));
    },
  };
  let chart: SketchChart | null = null;
  return {
    show(settings, glide) {
      now = settings;
      const fresh = datasetsOf(rowsOf(settings));
      if (chart === null) {
        chart = createSketch(canvas, settings, fresh, [plugin]);
        return;
      }
      fitTo(chart, settings);
      chart.data.datasets.forEach((dataset, i) => {
        dataset.data = fresh[i]?.data ?? [];
      });
      chart.update(glide ? undefined : "none");
    },
    destroy: () => chart?.destroy(),
  };
}

function datasetsOf(rows: readonly Row[]): Dataset[] {
  return [
    {
      type: "bar",
      indexAxis: "y",
      grouped: false,
      barThickness: THICK,
      backgroundColor: "transparent",
      // Chart.js takes a pair as a floating bar; its types know pairs only in arrays of them.
      data: rows.map(({ low, high, y }) => ({ x: [low, high], y })) as never,
    },
    { type: "scatter", pointRadius: 0, data: rows.map(({ bar, y }) => ({ x: bar.at, y })) },
  ];
}
