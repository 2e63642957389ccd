import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { JSHandle, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { openContext, testOfFirstLoad as test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";

const BUILD = fileURLToPath(new URL("../../dist/dashboard/", import.meta.url));
/** A page of each kind. */
const PATHS = [
  "/",
  "/finds/orange-racer",
  "/finds/white-carbon-racer",
  "/finds/plum-hybrid/listing",
  "/finds/plum-hybrid/stand",
  "/selling/plum-hybrid",
  "/describe",
  "/spot",
  "/sheets",
  "/prices",
  "/compare",
] as const;

/** Every page of the build, by its address. */
function built(): Map<string, string> {
  const files = readdirSync(BUILD, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".html"),
  );
  return new Map(
    files.map((file) => [`/${file.replace(/(index)?\.html$/, "")}`, readFileSync(BUILD + file, "utf8")]),
  );
}

/** All words of a part of the page, in order. What is typed in a field is no part of its text once a script writes it. */
function wordsIn(root: Element): string {
  const copy = root.cloneNode(true) as Element;
  for (const field of copy.querySelectorAll("textarea")) field.remove();
  return copy.textContent ?? "";
}

const first = (page: Page) => page.locator("#first");
const isAlive = (page: Page) => first(page).waitFor({ state: "detached" });

/** Opens a page whose answers do not come yet; returns how to let them. */
async function openWaiting(page: Page, path: string): Promise<() => void> {
  let release: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route("**/v1/**", async (route) => {
    await held;
    await route.continue();
  });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(path);
  await first(page).waitFor();
  return release;
}

describe("the first sight of a page", { timeout: 60_000 }, () => {
  test("holds its answers, and is written for every page that stands without anything of the user's own", () => {
    const pages = built();
    expect(pages.size).toBeGreaterThan(30);
    for (const [path, html] of pages) {
      const [, sight = ""] = /<div id="first">([\s\S]*)<div id="app">/.exec(html) ?? [];
      expect(sight.match(/<h1\b/g), path).toHaveLength(1);
      expect(sight, path).toMatch(/invented|Nothing is sent|inspection sheet|What kind is it/i);
      expect(sight, path).not.toMatch(/NaN|undefined|Working it out/);
    }
  });

  test("stands without any script", async ({ site, browser }) => {
    const { context } = await openContext(browser, site, { javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto("/finds/plum-hybrid");
    await headed(page, /^Make the plum hybrid safe: €\d/);
    await page.goto("/together");
    await headed(page, /\bfit\b/);
    await context.close();
  });

  for (const path of PATHS) {
    test(`of ${path} is what the page then is, and its elements stay`, async ({ page }) => {
      const release = await openWaiting(page, path);
      const seen = await first(page).evaluate(wordsIn);
      const heading = await page.getByRole("heading", { level: 1 }).elementHandle();
      // Pictures are drawn, and parts come, after the words: the text is read the moment it is brought to life.
      await first(page).evaluate((sight) => {
        new MutationObserver((_, observer) => {
          observer.disconnect();
          Object.assign(globalThis, { lived: sight.cloneNode(true) });
        }).observe(sight, { attributeFilter: ["id"] });
      });
      release();
      await isAlive(page);
      const lived = await page.waitForFunction(() => (globalThis as unknown as { lived?: Element }).lived);
      expect(await (lived as JSHandle<Element>).evaluate(wordsIn)).toBe(seen);
      expect(await heading?.evaluate((one) => one.isConnected)).toBe(true);
    });
  }

  test("takes what is done on it: picks and words are there once it is alive", async ({ page }) => {
    const release = await openWaiting(page, "/describe");
    for (const label of ["Road racing", "1980s", "Steel", "Top"])
      await page.getByRole("radio", { name: label, exact: true }).first().check();
    await page.getByLabel("Name on the chart (optional)").fill("Shed racer");
    release();
    await isAlive(page);
    await headed(page, /^Restore Shed racer: |^Restore it: /);
    expect(await page.getByLabel("Name on the chart (optional)").inputValue()).toBe("Shed racer");
    for (const label of ["Road racing", "1980s", "Steel", "Top"])
      expect(await page.getByRole("radio", { name: label, exact: true }).first().isChecked()).toBe(true);
  });

  test("unfolds what was unfolded on it, and its links lead on", async ({ page }) => {
    const release = await openWaiting(page, "/finds/orange-racer");
    const fold = first(page).locator("details").first();
    await fold.locator("summary").click();
    release();
    await isAlive(page);
    await expect.poll(() => page.locator("#app details").first().getAttribute("open")).not.toBeNull();

    await openWaiting(page, "/finds/orange-racer");
    await page.getByRole("link", { name: "Finds", exact: true }).first().click();
    await expect.poll(() => new URL(page.url()).pathname).toBe("/");
    await isAlive(page);
  });

  test("leaves nothing of itself on another page, on a phone", async ({ page }) => {
    const shapeOf = () =>
      page
        .locator("#app nav a, #app main, #app main > *")
        .evaluateAll((all) =>
          all.map((one) => [one.tagName, one.className, one.getAttribute("aria-current")].join(" ")),
        );
    const release = await openWaiting(page, "/finds/orange-racer");
    await page.waitForLoadState("load");
    await page.getByRole("link", { name: "use my own prices" }).click();
    release();
    await isAlive(page);
    const shown = page.getByRole("region", { name: /^Prices of parts|price/i }).first();
    await shown.waitFor();
    const led = await shapeOf();
    await page.unrouteAll();
    await page.reload();
    await isAlive(page);
    await shown.waitFor();
    expect(led).toEqual(await shapeOf());
  });

  test("is not seen where the page would be another", async ({ site, browser }) => {
    const sight = async (path: string, locale: string, keep = false, width = 390) => {
      const { context } = await openContext(browser, site, { locale, viewport: { width, height: 844 } });
      const page = await context.newPage();
      if (keep) {
        await page.goto("/robots.txt");
        await page.evaluate(() => localStorage.setItem("spokeworth.goal", "25"));
      }
      await page.route("**/v1/**", () => {});
      await page.goto(path, { waitUntil: "domcontentloaded" });
      const seen = await page.evaluate(() => document.documentElement.dataset.sight !== "none");
      await page.unrouteAll({ behavior: "ignoreErrors" });
      await context.close();
      return seen;
    };
    expect(await sight("/compare", "en-GB")).toBe(true);
    expect(await sight("/compare", "en-GB", false, 1280)).toBe(false);
    expect(await sight("/finds/of-ones-own", "en-GB")).toBe(false);
    expect(await sight("/finds/plum-hybrid/stand#check-chain-wear", "en-GB")).toBe(false);
    expect(await sight("/", "de-DE")).toBe(false);
    expect(await sight("/", "en-GB", true)).toBe(false);
  });
});
