import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { importsIn } from "./architecture/sourceText.ts";
import { violations } from "./architecture/violations.ts";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const TOP_LEVEL = [
  "DEVELOPERS.md",
  "README.md",
  "biome.json",
  "dashboard",
  "data",
  "package-lock.json",
  "package.json",
  "tests",
  "tsconfig.json",
  "worker",
  "wrangler.toml",
];
const MADE_BY_TOOLS = ["node_modules", "dist", "coverage"];

/** Paths from the top, with "/", of the TypeScript sources. */
function sources(): string[] {
  return ["worker", "dashboard", "data", "tests"]
    .filter((folder) => existsSync(join(ROOT, folder)))
    .flatMap((folder) =>
      readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
        .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join("/")),
    );
}

describe("the house", () => {
  test("every source imports only what its room may, and the engine touches neither clock, chance nor platform", () => {
    const files = sources();
    expect(files).toContain("worker/index.ts");
    expect(files.flatMap((file) => violations(file, readFileSync(join(ROOT, file), "utf8")))).toEqual([]);
  });

  test("the top level holds what was agreed and nothing else", () => {
    const names = readdirSync(ROOT).filter((name) => !name.startsWith(".") && !MADE_BY_TOOLS.includes(name));
    expect(names.filter((name) => !TOP_LEVEL.includes(name))).toEqual([]);
  });
});

describe("the check of the house fails where it should", () => {
  test.each([
    [
      "worker/engine/statistics/normal.ts",
      'import { course } from "../decision/course.ts";',
      "decision/course",
    ],
    [
      "worker/engine/valuation/marketValue.ts",
      'import type { Finding } from "../inspection/finding.ts";',
      "inspection",
    ],
    [
      "worker/engine/valuation/marketValue.ts",
      'import { workPlan } from "../service/workPlan.ts";',
      "service",
    ],
    [
      "worker/engine/service/operation.ts",
      'import operations from "../../../data/operations.json";',
      "data/operations",
    ],
    ["worker/engine/service/operation.ts", 'import { Hono } from "hono";', "package hono"],
    [
      "worker/engine/decision/course.ts",
      'import { markdown } from "../selling/markdown.ts";',
      "selling/markdown",
    ],
    ["worker/engine/decision/course.ts", 'export * from "../portfolio/selection.ts";', "portfolio"],
    ["worker/engine/decision/course.ts", 'const late = import("../learning/speed.ts");', "learning"],
    ["worker/engine/quantity.ts", 'import { raise } from "./domainError.ts";', "domainError"],
    ["worker/engine/misc/helper.ts", "", "belongs to no room"],
    ["worker/engine/service/operation.ts", "const y = Math.exp(x);", "Math.exp, whose last digit differs"],
    ["worker/engine/service/operation.ts", "const all = terms.map(Math\n  .log1p);", "Math.log1p"],
    ["worker/engine/service/operation.ts", "const { exp } = Math;", "uses Math, whose last digit"],
    ["worker/engine/service/operation.ts", "const y = Math.max(1, x) ** 1.5;", "uses **"],
    ["worker/tables.ts", 'import { appraise } from "./engine/appraisal.ts";', "import type"],
    ["worker/log/workshop.ts", 'import { Hono } from "hono";', "package hono"],
    ["worker/api/routes/appraisals.ts", 'import { tables } from "../../tables.ts";', "import type"],
    [
      "dashboard/pages/find.tsx",
      'import { appraise } from "../../worker/engine/appraisal.ts";',
      "API's types",
    ],
    ["dashboard/pages/find.tsx", 'import {\n  createApp,\n} from "../../worker/api/app.ts";', "import type"],
    [
      "dashboard/local/localApi.ts",
      'import { readCatalogue } from "../../worker/tables.ts";',
      "the one door through which the dashboard reaches the engine",
    ],
    ["dashboard/serviceWorker/serviceWorker.ts", 'import { App } from "../App.tsx";', "dashboard/App"],
    ["worker/index.ts", 'import { countLine } from "../tests/reporter/countLine.ts";', "tests/reporter"],
  ])("%s may not contain: %s", (file, text, named) => {
    const found = violations(file, text);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(named);
  });

  test.each([
    ["const now = Date.now();", "Date"],
    ["const now = new Date;", "Date"],
    ["const u = Math.random();", "Math.random"],
    ["const name = `$" + "{process.env.HOME}`;", "process"],
    ["export async function wait() {}", "async"],
    ["globalThis.cache = 1;", "globalThis"],
    ["console.log(1);", "console"],
    ["setTimeout(f, 1);", "setTimeout"],
    ["return crypto.randomUUID();", "crypto"],
  ])("the engine may not contain: %s", (text, named) => {
    expect(violations("worker/engine/decision/course.ts", text)).toEqual([expect.stringContaining(named)]);
  });

  test("words in comments, texts and field names are no use of the platform", () => {
    const text = [
      "/** The process of a Date; await nothing. */",
      'const why = "console yourself: no crypto";',
      "const note = `fetch the wheel`;",
      "interface Step { process: string }",
      "plan.process = step.process;",
      'import type { Part } from "../service/part.ts";',
    ].join("\n");
    expect(violations("worker/engine/decision/course.ts", text)).toEqual([]);
  });

  test("every form of import is seen, and one in a comment is not", () => {
    const text = [
      'import a, { b } from "./a.ts";',
      'import type { C } from "./c.ts";',
      'import * as d from "d";',
      'import "./e.css";',
      'export { f } from "./f.ts";',
      'export type { G } from "./g.ts";',
      'import data from "./h.json" with { type: "json" };',
      'const i = await import("./i.ts");',
      "import {",
      "  j,",
      '} from "./j.ts";',
      '// import k from "./k.ts";',
      'export const from = "./l.ts";',
    ].join("\n");
    expect(importsIn(text)).toEqual([
      { specifier: "./a.ts", typeOnly: false },
      { specifier: "./c.ts", typeOnly: true },
      { specifier: "d", typeOnly: false },
      { specifier: "./e.css", typeOnly: false },
      { specifier: "./f.ts", typeOnly: false },
      { specifier: "./g.ts", typeOnly: true },
      { specifier: "./h.json", typeOnly: false },
      { specifier: "./j.ts", typeOnly: false },
      { specifier: "./i.ts", typeOnly: false },
    ]);
  });
});
