import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { defineConfig } from "vite";
import { catalogueAsset } from "./build/catalogueAsset.ts";
import { firstSights } from "./build/firstSights.ts";
import { serviceWorker } from "./build/serviceWorker.ts";

/*
 * Scripts that on their own are too small to be worth a request each: what the first page opens with, which every page
 * needs, is one; what most of the others share is one; what tells of a find and its range is one; what reads and writes files is one.
 */
const SHARED =
  /\/dashboard\/(words\/(copied|copying|fields|length|looks|noFindOfYours|noSuchFind|rateBar|ready|refusal|seen|soldState|states|titles|untold|verdictBar)|state\/(compared|handling|knownIds|preference|units)|parts\/(OwnFindPage|Picks|useKeys)|find\/(CopyButton|RateBar|ReadyParts|names)|answers\/answersOf|begun\/(rows|untold)|compare\/chosen|finds\/copy|listing\/copyText|pages\/findStates|sale\/states|signs\/Cautions)\.tsx?$/;
const TOLD =
  /\/dashboard\/(words\/(bandLines|findTexts|glossary|ownShare|reasons)|find\/(Halt|Reasons)|parts\/Term|sale\/BandChart)\.tsx?$/;
const FILES = /\/dashboard\/(ownPrices\/(download|fileText)|share\/(fingerprint|findsFile|leftOut))\.ts$/;

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
      output: {
        codeSplitting: {
          groups: [
            { name: "base", tags: ["$initial"], priority: 1 },
            { name: "shared", test: SHARED },
            { name: "told", test: TOLD },
            { name: "files", test: FILES },
          ],
        },
      },
      // The pages are drawn while they are built: that takes its time, and is no news.
      checks: { bundlerTimings: false },
    },
  },
});
