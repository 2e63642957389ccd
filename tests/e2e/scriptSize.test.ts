import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const BUILD = fileURLToPath(new URL("../../dist/dashboard/", import.meta.url));

const weight = (script: string) => gzipSync(readFileSync(BUILD + script)).length;
const total = (scripts: readonly string[]) => scripts.reduce((sum, script) => sum + weight(script), 0);

/** Scripts with all that they import before they run. */
function withImports(scripts: readonly string[], known: Set<string> = new Set()): readonly string[] {
  for (const script of scripts) {
    if (known.has(script)) continue;
    known.add(script);
    const imported = [
      ...readFileSync(BUILD + script, "utf8").matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g),
    ];
    withImports(
      imported.map(([, name]) => `assets/${name}`),
      known,
    );
  }
  return [...known];
}

/** The scripts of the build that the end-to-end tests run against, by when they are fetched. */
function scripts() {
  const page = readFileSync(`${BUILD}index.html`, "utf8");
  const built = readdirSync(`${BUILD}assets`)
    .filter((name) => name.endsWith(".js"))
    .map((name) => `assets/${name}`);
  const named = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map(([, script]) => script!);
  // What the page names, and what draws its chart once the words stand.
  const first = withImports([...named, ...built.filter((name) => name.includes("/drawings-"))]);
  const engine = built.filter((name) => name.includes("/engine.worker-"));
  const later = built.filter((name) => !first.includes(name) && !engine.includes(name));
  return { words: named, first, later, engine, serviceWorker: ["sw.js"] };
}

/** Kilobytes as they are sent (gzip), with room for small changes above what was measured. */
const BOUNDS = [
  { what: "the first page until its words stand", part: "words", least: 20, most: 45 },
  // Preact and Chart.js alone weigh more than the least: an empty build does not pass.
  { what: "the first page with its chart", part: "first", least: 70, most: 120 },
  { what: "the other pages, and what a page fetches when it is wanted", part: "later", least: 30, most: 175 },
  { what: "the engine, fetched once the first answer stands", part: "engine", least: 80, most: 145 },
  { what: "the service worker, fetched last", part: "serviceWorker", least: 2, most: 8 },
] as const;

test.each(BOUNDS)("$what: between $least and $most kB of script", ({ part, least, most }) => {
  const measured = total(scripts()[part]);
  expect(measured).toBeGreaterThan(least * 1000);
  expect(measured).toBeLessThan(most * 1000);
});

test("all of it, on whatever page and without a signal: less than 404 kB of script", () => {
  const { first, later, engine, serviceWorker } = scripts();
  expect(total([...first, ...later, ...engine, ...serviceWorker])).toBeLessThan(404_000);
});
