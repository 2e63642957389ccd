import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from "playwright-core";
import { test as base, expect, inject } from "vitest";
import { BROWSER_MISSING } from "./chromium.ts";
import type {} from "./globalSetup.ts";
import { SharedPage } from "./sharedPage.ts";

/**
 * Features that are off: Playwright's own list, whose place this takes, as far as it matters here; the pages behind the
 * address bar, a process for every window; and the process in reserve for the next page.
 */
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
  "SpareRendererForSitePerProcess",
];
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--disable-sync",
  "--disable-background-networking",
  // No other host is ever reached: it has no address.
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost",
  `--disable-features=${WITHOUT.join(",")}`,
];

/**
 * A test in a real browser against the whole service, dashboard and API. `site` is its address, `page` a page as new whose
 * relative addresses lead there, of a visitor who has kept nothing but the files that never change, in a browser without the engine. A page that raises an
 * error, or asks anything of another host, fails its test. The browser serves one test file after the other.
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
  .extend("visit", { scope: "worker" }, async ({ site, browser }, { onCleanup }) => {
    const visit = await openContext(browser, site, { serviceWorkers: "block" });
    await withoutEngine(visit.context);
    onCleanup(() => visit.context.close());
    const newPage = async () => broughtToLife(await visit.context.newPage());
    return { ...visit, shared: new SharedPage(visit.context, site, newPage) };
  })
  .extend("page", async ({ visit: { context, faults, shared } }, { onCleanup }) => {
    onCleanup(async () => {
      await context.clearPermissions();
      await context.setOffline(false);
      await shared.putBack();
      expect(faults.splice(0)).toEqual([]);
    });
    return shared.take();
  });

/** The same with the engine, and nothing in the browser's cache: for what is seen while a page loads, and what it then works out itself. */
export const testOfFirstVisit = test.extend("page", async ({ site, browser }, { onCleanup }) => {
  const { context, faults } = await openContext(browser, site);
  onCleanup(async () => {
    await context.close();
    expect(faults).toEqual([]);
  });
  return context.newPage();
});

/** The same without the engine: for what comes while a page loads, engine apart. */
export const testOfFirstLoad = testOfFirstVisit.extend("page", async ({ site, browser }, { onCleanup }) => {
  const { context, faults } = await openContext(browser, site);
  await withoutEngine(context);
  onCleanup(async () => {
    await context.close();
    expect(faults).toEqual([]);
  });
  return context.newPage();
});

/** The engine in the page has tests of its own: here the server answers, and starting one on every page would only cost time. */
async function withoutEngine(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    class Silent extends EventTarget {
      postMessage(): void {}
      terminate(): void {}
    }
    Object.assign(globalThis, { Worker: Silent });
  });
}

/** The same page, which opens an address once that has been brought to life: its first sight has tests of its own. */
function broughtToLife(page: Page): Page {
  const isAlive = () => page.waitForFunction(() => document.getElementById("first") === null);
  const [goto, reload] = [page.goto.bind(page), page.reload.bind(page)];
  return Object.assign(page, {
    goto: async (...which: Parameters<Page["goto"]>) => {
      const response = await goto(...which);
      await isAlive();
      return response;
    },
    reload: async (...how: Parameters<Page["reload"]>) => {
      const response = await reload(...how);
      await isAlive();
      return response;
    },
  });
}

/** A visitor's browser, and what went wrong on its pages so far. */
interface Visit {
  readonly context: BrowserContext;
  readonly faults: string[];
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
  context.on("request", (request) => {
    const { protocol, host } = new URL(request.url());
    if (protocol.startsWith("http") && host !== site.host)
      faults.push(`request to another host: ${request.url()}`);
  });
  context.on("page", (page) => {
    // Shorter than a test may take, so that a failure names what was waited for.
    page.setDefaultTimeout(10_000);
  });
  context.on("weberror", (fault) => faults.push(`error on the page: ${fault.error().message}`));
  return { context, faults };
}
