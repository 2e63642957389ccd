import { type Browser, type BrowserContext, type BrowserContextOptions, chromium } from "playwright-core";
import { test as base, expect, inject } from "vitest";
import { BROWSER_MISSING } from "./chromium.ts";
import type {} from "./globalSetup.ts";

/** Takes the place of Playwright's own list, whose entries that matter here it repeats; the last three are pages behind the address bar. */
const WITHOUT = [
  "AvoidUnnecessaryBeforeUnloadCheckSync",
  "DestroyProfileOnBrowserClose",
  "HttpsUpgrades",
  "MediaRouter",
  "OptimizationHints",
  "PaintHolding",
  "ThirdPartyStoragePartitioning",
  "WebUIOmniboxPopup",
  "WebUIOmniboxAimPopup",
  "WebUIOmniboxFullPopup",
];
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--disable-sync",
  "--disable-background-networking",
  `--disable-features=${WITHOUT.join(",")}`,
];

/**
 * A test in a real browser against the whole service, dashboard and API. `site` is its address, `page` a fresh page of a
 * visitor of its own, whose relative addresses lead there. A page that raises an error, or asks anything of another host,
 * fails its test. The browser serves one test file after the other.
 */
export const test = base
  .extend("site", { scope: "worker" }, () => new URL(inject("site")))
  .extend("browser", { scope: "worker" }, async ({}, { onCleanup }) => {
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
    const { context, faults } = await openContext(browser, site);
    const page = await context.newPage();
    onCleanup(async () => {
      await context.close();
      expect(faults).toEqual([]);
    });
    return page;
  });

/** A visitor's browser, and what went wrong on its pages so far. */
interface Visit {
  readonly context: BrowserContext;
  readonly faults: readonly string[];
}

/**
 * A fresh browser of a visitor to a site. It keeps no pages, as on a first visit, unless the options let service workers in.
 */
export async function openContext(
  browser: Browser,
  site: URL,
  options: BrowserContextOptions = { serviceWorkers: "block" },
): Promise<Visit> {
  const context = await browser.newContext({ baseURL: site.href, ...options });
  const faults: string[] = [];
  await keepInside(context, site, faults);
  context.on("page", (page) => {
    // Shorter than a test may take, so that a failure names what was waited for.
    page.setDefaultTimeout(10_000);
    page.on("pageerror", (error) => faults.push(`error on the page: ${error.message}`));
  });
  return { context, faults };
}

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
