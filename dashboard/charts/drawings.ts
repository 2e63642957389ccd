/** Everything that draws with Chart.js on the first pages: one script of its own. */
export { createBarsDrawing } from "./barsDrawing.ts";
export { createDotsDrawing } from "./dotsDrawing.ts";
