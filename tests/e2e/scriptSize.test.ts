import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const BUILD = fileURLToPath(new URL("../../dist/dashboard/", import.meta.url));
const MOST_KB = 120;

const weight = (script: string) => gzipSync(readFileSync(BUILD + script)).length;

/** Of the build that the end-to-end tests run against. */
test(`the scripts of the dashboard's first page weigh less than ${MOST_KB} kB, as they are sent (gzip)`, () => {
  const page = readFileSync(`${BUILD}index.html`, "utf8");
  // What the page names is all it loads at first: Vite lists there what the entry imports.
  const scripts = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map(([, script]) => script!);
  const total = scripts.reduce((sum, script) => sum + weight(script), 0);
  // Preact and Chart.js alone weigh more than this: an empty build does not pass.
  expect(total).toBeGreaterThan(30_000);
  expect(total).toBeLessThan(MOST_KB * 1000);
});

test("what is fetched later, when its page is opened or a file is read, weighs less than 90 kB", () => {
  const page = readFileSync(`${BUILD}index.html`, "utf8");
  const later = readdirSync(`${BUILD}assets`)
    .filter((name) => name.endsWith(".js") && !page.includes(name))
    .map((name) => weight(`assets/${name}`));
  expect(later.length).toBeGreaterThan(0);
  expect(later.reduce((sum, one) => sum + one, 0)).toBeLessThan(90_000);
});
