import { fileURLToPath } from "node:url";
import { build } from "vite";
import type { TestProject } from "vitest/node";
import { type Browser, findChromium } from "./chromium.ts";
import { serveRememberingSite } from "./site.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Null where none starts: then each test that wants it fails and says what to install. */
    chromium: Browser | null;
    /** Address of the service that all of them visit. */
    site: string;
  }
}

/**
 * Once before the end-to-end tests: the dashboard as it would be deployed, the whole service on a port of its own, and a
 * browser that starts. What a visitor leaves behind lies in the visitor's browser: so one service is enough for all.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  project.provide("chromium", findChromium());
  await buildAsDeployed();
  const { url, close } = await serveRememberingSite();
  project.provide("site", url.href);
  return close;
}

/** The test runner's NODE_ENV would make Vite build for development: other, heavier scripts than those that are sent. */
async function buildAsDeployed(): Promise<void> {
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  try {
    await build({
      configFile: fileURLToPath(new URL("../../../dashboard/vite.config.ts", import.meta.url)),
      logLevel: "warn",
    });
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
}
