import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { defineConfig } from "vite";
import { catalogueAsset } from "./build/catalogueAsset.ts";
import { serviceWorker } from "./build/serviceWorker.ts";

/** What every page needs as soon as it opens: in one script, since on their own most are too small to be worth a request. */
const BASE =
  /\/dashboard\/(words\/(common|count|course|figure|locale|money|plain|range)|state\/(reference|shelf))\.ts$|\/preact\/jsx-runtime\//;

/** Builds the dashboard into dist/dashboard, from which the Worker serves it. */
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  plugins: [preact(), serviceWorker()],
  worker: { format: "es", plugins: () => [catalogueAsset()] },
  build: {
    outDir: fileURLToPath(new URL("../dist/dashboard", import.meta.url)),
    emptyOutDir: true,
    target: "es2022",
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: "base", test: BASE }] } } },
  },
});
