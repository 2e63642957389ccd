import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { defineConfig } from "vite";
import { catalogueAsset } from "./build/catalogueAsset.ts";
import { firstSights } from "./build/firstSights.ts";
import { serviceWorker } from "./build/serviceWorker.ts";

/** What every page needs as soon as it opens: in one script, since on their own most are too small to be worth a request. */
const BASE =
  /\/dashboard\/(words\/(common|count|course|figure|locale|money|plain|range)|state\/(reference|shelf))\.ts$|\/preact\/jsx-runtime\//;

/** Builds the dashboard into dist/dashboard, from which the Worker serves it. */
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  plugins: [preact(), firstSights(), serviceWorker()],
  worker: { format: "es", plugins: () => [catalogueAsset()] },
  build: {
    outDir: fileURLToPath(new URL("../dist/dashboard", import.meta.url)),
    emptyOutDir: true,
    target: "es2022",
    // One style sheet: one that came with a later page would have every font looked for anew, and the text move.
    cssCodeSplit: false,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: "base", test: BASE }] } },
      // The pages are drawn while they are built: that takes its time, and is no news.
      checks: { bundlerTimings: false },
    },
  },
});
