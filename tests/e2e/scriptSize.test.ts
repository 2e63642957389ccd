import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const ASSETS = fileURLToPath(new URL("../../dist/dashboard/assets/", import.meta.url));
const MOST_KB = 120;

/** Of the build that the end-to-end tests run against. */
test(`the dashboard's scripts weigh less than ${MOST_KB} kB in all, as they are sent (gzip)`, () => {
  const scripts = readdirSync(ASSETS).filter((name) => name.endsWith(".js"));
  const bytes = scripts.map((name) => gzipSync(readFileSync(ASSETS + name)).length);
  const total = bytes.reduce((sum, one) => sum + one, 0);
  expect(scripts.length).toBeGreaterThan(0);
  // Preact and Chart.js alone weigh more than this: an empty build does not pass.
  expect(total).toBeGreaterThan(30_000);
  expect(total).toBeLessThan(MOST_KB * 1000);
});
