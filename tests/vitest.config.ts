import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { cloudflareTest } from "@cloudflare/vitest-plugin";
import { defineConfig } from "vitest/config";

// No contact with the outside while testing: wrangler's usage figures and the fetch of sample request metadata.
process.env.WRANGLER_SEND_METRICS ??= "false";
process.env.CLOUDFLARE_CF_FETCH_ENABLED ??= "false";

const root = fileURLToPath(new URL("..", import.meta.url));

/**
 * What computes runs once a core, since each worker reads and compiles the engine for itself; browser tests wait as well, and come first, two a core.
 * The two kinds take turns, as Vitest asks of projects with their own count of workers.
 */
const cores = availableParallelism();
const computing = { maxWorkers: cores, sequence: { groupOrder: 1 } };
const waiting = { maxWorkers: 2 * cores, sequence: { groupOrder: 0 } };

/** No claim about speed: room for a machine that is busy with something else. */
const testTimeout = 60_000;

/**
 * Every test of the project. Each project below is a place to run: plain Node for what is pure,
 * the Worker's own runtime for the API, a real browser for the end-to-end tests.
 */
export default defineConfig({
  root,
  test: {
    reporters: ["default", "./tests/reporter/countLine.ts"],
    coverage: {
      provider: "istanbul",
      include: ["worker/**/*.ts", "dashboard/**/*.{ts,tsx}"],
      reportsDirectory: "coverage",
    },
    projects: [
      {
        root,
        test: {
          name: "engine",
          ...computing,
          testTimeout,
          // Pure functions keep nothing between files, so that one start of a worker serves many.
          isolate: false,
          include: ["tests/*.test.ts", "tests/{engine,outside,regression,data,bench,reporter}/**/*.test.ts"],
        },
      },
      {
        root,
        plugins: [
          cloudflareTest({
            wrangler: { configPath: "./wrangler.toml" },
            miniflare: { compatibilityFlags: ["nodejs_compat"] },
          }),
        ],
        test: { name: "api", ...computing, testTimeout, isolate: false, include: ["tests/api/**/*.test.ts"] },
      },
      {
        root,
        oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
        test: {
          name: "dashboard",
          ...computing,
          testTimeout,
          // What a page keeps for itself each test sets as it needs it: one start of a worker serves many files.
          isolate: false,
          include: ["tests/dashboard/**/*.test.{ts,tsx}"],
        },
      },
      {
        root,
        test: {
          name: "e2e",
          ...waiting,
          // One browser and one start of Playwright for all the files that a worker takes.
          isolate: false,
          include: ["tests/e2e/**/*.test.ts"],
          globalSetup: ["./tests/e2e/setup/globalSetup.ts"],
          testTimeout,
          hookTimeout: 60_000,
          // What a page comes to shows when its answer has come: as long as a page waits for anything.
          expect: { poll: { timeout: 10_000 } },
        },
      },
    ],
  },
});
