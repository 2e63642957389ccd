import { Chart } from "chart.js";
import { mayMove, SETTLE_MS } from "./chart.ts";
import type { Palette } from "./palette.ts";
import type { Scene } from "./plane.ts";

export interface PlaneChart {
  show(scene: Scene, active: number | null): void;
  destroy(): void;
}

/**
 * A chart of two value axes that fills its canvas; axes, names and figures stand beside it. The scene draws itself between its anchors.
 * @param palette read at every drawing, so that a new theme is followed
 * @param still draws at once, at `still` pixels for each: a picture to keep
 */
export function createPlane(canvas: HTMLCanvasElement, palette: () => Palette, still?: number): PlaneChart {
  let now: { scene: Scene; active: number | null } | null = null;
  const chart = new Chart<"scatter">(canvas, {
    type: "scatter",
    data: { datasets: [{ pointRadius: 0, data: [] }] },
    plugins: [
      {
        id: "plane",
        afterDatasetsDraw({ ctx }) {
          if (now === null) return;
          const at = chart.getDatasetMeta(0).data.map(({ x, y }) => ({ x, y }));
          now.scene.paint({ ink: ctx, at, palette: palette(), active: now.active });
        },
      },
    ],
    options: {
      responsive: false,
      maintainAspectRatio: false,
      ...(still === undefined ? {} : { devicePixelRatio: still }),
      animation: still === undefined && mayMove() ? { duration: SETTLE_MS, easing: "easeOutCubic" } : false,
      events: [],
      layout: { padding: 0 },
      scales: {
        x: { type: "linear", display: false, min: 0, max: 1 },
        y: { type: "linear", display: false, min: 0, max: 1 },
      },
    },
  });
  return {
    show(scene, active) {
      const { width, height, x, y } = scene.plane;
      const moved = chart.width !== width || chart.height !== height;
      if (moved) {
        // While anything still moves, Chart.js would put the new size off to a frame that may never come.
        chart.stop();
        chart.resize(width, height);
      }
      const glide = !moved && now?.scene.order === scene.order;
      now = { scene, active };
      const { scales } = chart.options;
      Object.assign(scales?.x ?? {}, { min: x.min, max: x.max });
      Object.assign(scales?.y ?? {}, { min: y.min, max: y.max });
      const dataset = chart.data.datasets[0];
      if (dataset !== undefined) dataset.data = scene.anchors.map((point) => ({ ...point }));
      chart.update(glide ? undefined : "none");
    },
    destroy: () => chart.destroy(),
  };
}
