import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { openContext, test } from "./setup/browserTest.ts";
import { serveChangingSite } from "./setup/changingSite.ts";
import { describeFind, headed, openCheck, openFinds } from "./setup/dashboard.ts";
import { servePassedOn } from "./setup/passedOn.ts";

const PHONE = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true } as const;
const HERE = "Worked out on this phone.";
const NO_SIGNAL = "No signal. Worked out on this phone.";
/** Pages that were never opened while there was a server: address and heading. */
const NEVER_OPENED = [
  ["/compare", /^The plum hybrid is the surest/],
  ["/together", /fit/],
  ["/finds/plum-hybrid/listing", /^Made safe it sells for about €\d+/],
  ["/finds/white-carbon-racer", /^Stopped\./],
] as const;

/** Waits until every file of the pages lies in the browser. */
async function kept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { serviceWorker } = navigator;
    const taken = new Promise((resolve) => serviceWorker.addEventListener("controllerchange", resolve));
    await serviceWorker.ready;
    if (serviceWorker.controller === null) await taken;
  });
}

const workedOut = (page: Page) => page.locator(".workedout").textContent();

describe("without a signal, after one visit", { timeout: 60_000 }, () => {
  test("a signal that goes and comes is said by the goal; with the server gone, the finds, pages that were never opened and one that is described are there and answered, all on the phone", async ({
    browser,
    site: whole,
  }) => {
    const site = await servePassedOn(whole);
    const { context, faults } = await openContext(browser, site.url, PHONE);
    const page = await context.newPage();
    await openFinds(page);
    expect(await workedOut(page)).toBe("Worked out by the server.");
    await kept(page);

    await context.setOffline(true);
    await page.getByText(NO_SIGNAL).waitFor();
    await page.getByRole("link", { name: "Which together" }).click();
    await headed(page, /fit/);
    expect(await workedOut(page)).toBe(HERE);
    await context.setOffline(false);
    await page.getByText(NO_SIGNAL).waitFor({ state: "detached" });

    await site.close();
    await openFinds(page);
    await headed(page, /seven earns? more/);
    await page.getByText(NO_SIGNAL).waitFor();
    expect(await workedOut(page)).toBe(HERE);
    for (const [path, heading] of NEVER_OPENED) {
      await page.goto(path);
      await headed(page, heading);
      await page.getByText(NO_SIGNAL).waitFor();
      expect(await workedOut(page), path).toBe(HERE);
    }
    const paths = await keptPaths(page);
    expect(paths).toContain("/");
    // What the server answers is never kept.
    expect(paths.filter((path) => /^\/(v1|health|openapi)/.test(path))).toEqual([]);

    await describeFind(page, ["Road racing", "1980s", "Steel", "Top"], /^Restore it: /);
    const check = await openCheck(page, "Signs of a front-end collision");
    await check.getByRole("radio", { name: /^Plain signs/ }).check();
    await headed(page, /^Break it for parts: /);
    expect(await workedOut(page)).toBe(HERE);
    await page.getByLabel("Asking price, or what you paid").fill("5000");
    await headed(page, /^Leave it: it bears .* and €5,000 is asked\.$/);
    await page.getByRole("link", { name: "See the whole answer" }).click();
    await headed(page, /^Leave /);
    expect(await workedOut(page)).toBe(HERE);
    expect(await page.getByRole("alert").count()).toBe(0);
    await context.close();
    expect(faults).toEqual([]);
  });
});

describe("what is newer than the pages", { timeout: 60_000 }, () => {
  test("a version of them waits until it is taken, what was typed meanwhile stays, and the page is loaded with it; the server's prices and rules are told of while the pages work from their own", async ({
    browser,
  }) => {
    const site = await serveChangingSite();
    const { context, faults } = await openContext(browser, site.url, {});
    const page = await context.newPage();
    await openFinds(page);
    await kept(page);
    site.deployPages("another version");
    await page.goto("/describe");
    await page.evaluate(() => Object.assign(globalThis, { sameDocument: true }));
    await page.getByText("A newer version is here.").waitFor();
    await page.getByRole("radio", { name: "Road racing", exact: true }).first().check();
    expect(await page.evaluate(() => "sameDocument" in globalThis)).toBe(true);
    await page.getByRole("button", { name: "Load it" }).click();
    await page.waitForFunction(() => !("sameDocument" in globalThis));
    const pick = page.getByRole("radio", { name: "Road racing", exact: true }).first();
    await pick.waitFor();
    expect(await pick.isChecked()).toBe(true);
    expect(await page.getByText("A newer version is here.").count()).toBe(0);

    const otherRules = page.getByText(/^The server now works with other prices or rules than this page\./);
    await openFinds(page);
    expect(await otherRules.count()).toBe(0);
    site.deployData("0123456789abcdef");
    await page.reload();
    await otherRules.waitFor();
    expect(await workedOut(page)).toBe("Worked out on this computer.");
    await context.close();
    await site.close();
    expect(faults).toEqual([]);
  });
});

async function keptPaths(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const names = await caches.keys();
    const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return requests.flat().map(({ url }) => new URL(url).pathname);
  });
}
