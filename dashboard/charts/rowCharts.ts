import type { BarsSettings } from "./bars.ts";
import type { DotsSettings } from "./dots.ts";
import { drawnLater } from "./drawn.ts";

const drawings = () => import("./drawings.ts");

/** Ranges as outlined bars with a sign at their long-run figure, one a row, on one axis. */
export const createBarsChart = drawnLater<BarsSettings>(async () => (await drawings()).createBarsDrawing);

/** Twenty dots a course, each 1 outcome in 20, on one axis; those that lose are hatched. */
export const createDotsChart = drawnLater<DotsSettings>(async () => (await drawings()).createDotsDrawing);
