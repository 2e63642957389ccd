import { fileURLToPath } from "node:url";
import { build } from "vite";
import type { TestProject } from "vitest/node";
import { type Browser, findChromium } from "./chromium.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Null where none starts: then each test that wants it fails and says what to install. */
    chromium: Browser | null;
  }
}

/** Once before the end-to-end tests: the dashboard as it would be deployed, and a browser that starts. */
export default async function setup(project: TestProject): Promise<void> {
  project.provide("chromium", findChromium());
  await buildAsDeployed();
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
