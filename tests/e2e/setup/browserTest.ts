import { fileURLToPath } from "node:url";
import { type BrowserContext, chromium } from "playwright-core";
import { test as base, expect, inject } from "vitest";
import { createTestHarness } from "wrangler";
import { BROWSER_MISSING } from "./chromium.ts";
import type {} from "./globalSetup.ts";

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--disable-sync",
  "--disable-background-networking",
];

/**
 * A test in a real browser against the whole service, dashboard and API, on a port of its own with an empty log.
 * `site` is its address, `page` a fresh page whose relative addresses lead there. A page that raises an error,
 * or asks anything of another host, fails its test.
 */
export const test = base
  .extend("site", { scope: "file" }, async ({}, { onCleanup }) => {
    const configPath = fileURLToPath(new URL("../../../wrangler.toml", import.meta.url));
    const harness = createTestHarness({ workers: [{ configPath }] });
    const { url } = await harness.listen();
    onCleanup(() => harness.close());
    return url;
  })
  .extend("browser", { scope: "file" }, async ({}, { onCleanup }) => {
    const found = inject("chromium");
    if (found === null) throw new Error(BROWSER_MISSING);
    const { executablePath, environment } = found;
    const browser = await chromium.launch({
      executablePath,
      args: FLAGS,
      env: { ...process.env, ...environment },
    });
    onCleanup(() => browser.close());
    return browser;
  })
  .extend("page", async ({ site, browser }, { onCleanup }) => {
    const context = await browser.newContext({ baseURL: site.href });
    const faults: string[] = [];
    await keepInside(context, site, faults);
    const page = await context.newPage();
    // Shorter than a test may take, so that a failure names what was waited for.
    page.setDefaultTimeout(10_000);
    page.on("pageerror", (error) => faults.push(`error on the page: ${error.message}`));
    onCleanup(async () => {
      await context.close();
      expect(faults).toEqual([]);
    });
    return page;
  });

/** Refuses and records what the pages of a context ask of any host but the site's. */
async function keepInside(context: BrowserContext, site: URL, faults: string[]): Promise<void> {
  await context.route(
    (url) => url.protocol.startsWith("http") && url.host !== site.host,
    async (route) => {
      faults.push(`request to another host: ${route.request().url()}`);
      await route.abort();
    },
  );
}
