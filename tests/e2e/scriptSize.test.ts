import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const BUILD = fileURLToPath(new URL("../../dist/dashboard/", import.meta.url));

const weight = (script: string) => gzipSync(readFileSync(BUILD + script)).length;
const total = (scripts: readonly string[]) => scripts.reduce((sum, script) => sum + weight(script), 0);

/** The scripts of the build that the end-to-end tests run against, by when they are fetched. */
function scripts() {
  const page = readFileSync(`${BUILD}index.html`, "utf8");
  // What the page names is all it loads at first: Vite lists there what the entry imports.
  const first = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map(([, script]) => script!);
  const built = readdirSync(`${BUILD}assets`)
    .filter((name) => name.endsWith(".js"))
    .map((name) => `assets/${name}`);
  const engine = built.filter((name) => name.includes("engine.worker"));
  const later = built.filter((name) => !first.includes(name) && !engine.includes(name));
  return { first, later, engine, serviceWorker: ["sw.js"] };
}

/** Kilobytes as they are sent (gzip), with room for small changes above what was measured. */
const BOUNDS = [
  // Preact and Chart.js alone weigh more than the least: an empty build does not pass.
  { what: "the first page", part: "first", least: 30, most: 120 },
  { what: "the other pages, and what a page fetches when it is wanted", part: "later", least: 30, most: 175 },
  { what: "the engine, fetched once the first answer stands", part: "engine", least: 80, most: 125 },
  { what: "the service worker, fetched last", part: "serviceWorker", least: 2, most: 8 },
] as const;

test.each(BOUNDS)("$what: between $least and $most kB of script", ({ part, least, most }) => {
  const measured = total(scripts()[part]);
  expect(measured).toBeGreaterThan(least * 1000);
  expect(measured).toBeLessThan(most * 1000);
});

test("all of it, on whatever page and without a signal: less than 385 kB of script", () => {
  const { first, later, engine, serviceWorker } = scripts();
  expect(total([...first, ...later, ...engine, ...serviceWorker])).toBeLessThan(385_000);
});
