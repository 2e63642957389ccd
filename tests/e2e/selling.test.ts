import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test, testOfFirstVisit } from "./setup/browserTest.ts";
import { headed, said } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const PLAN = /^Ask €[\d,]*\d, (stay there|come down in weeks? [\d, and]+|come down from week \d+ on)\.$/;

/** An answer under load takes a while. */
const SOON = { timeout: 10_000 };

async function openPlan(page: Page, id = "copper-track-bike"): Promise<string> {
  await page.goto(`/selling/${id}`);
  return headed(page, PLAN);
}

/** Amount of the first price in a text. */
function firstPrice(text: string): number {
  return Number(/€([\d,.]+)/.exec(text)?.[1]?.replace(",", ""));
}

describe("selling", { timeout: 60_000 }, () => {
  test("a find is chosen from the fourth tab; another state is another plan, kept after a reload", async ({
    page,
  }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/");
    const tabs = page.getByRole("navigation", { name: "Main, below" });
    expect((await tabs.getByRole("link").allInnerTexts()).indexOf("Selling")).toBe(
      (await tabs.getByRole("link").allInnerTexts()).indexOf("Side by side") + 1,
    );
    await tabs.getByRole("link", { name: "Selling" }).click();
    await headed(page, /^Which one do you sell\?$/);
    await page.getByRole("link", { name: /^Copper track bike/ }).click();
    const restored = await headed(page, PLAN);
    await page.getByRole("radio", { name: /^Made safe/ }).check();
    await expect.poll(() => page.getByRole("heading", { level: 1 }).textContent(), SOON).not.toBe(restored);
    const madeSafe = await headed(page, PLAN);
    expect(firstPrice(madeSafe)).toBeLessThan(firstPrice(restored));
    await page.reload();
    expect(await headed(page, PLAN)).toBe(madeSafe);
  });

  test("the lowest offer is nowhere on the page until it is shown, and gone when it is hidden again", async ({
    page,
  }) => {
    const hidden = await openPlan(page);
    const chart = page.getByRole("application", { name: /^Price over weeks/ });
    await page.getByText("Show as a table").first().click();
    const lowest = /take €|Take at least|lowest offer worth taking (goes|stays)/;
    expect(await said(page)).not.toMatch(lowest);
    expect(await chart.getAttribute("aria-label")).not.toMatch(lowest);

    const show = page.getByRole("button", { name: "Show the lowest offer" });
    await show.click();
    await headed(page, /, take €\d+ this week\.$/);
    expect(await show.getAttribute("aria-pressed")).toBe("true");
    expect(await chart.getAttribute("aria-label")).toMatch(lowest);
    expect(await said(page)).toContain("Take at least");
    await show.click();
    expect(await headed(page, PLAN)).toBe(hidden);
    expect(await said(page)).not.toMatch(lowest);
  });

  test("the chart is one tab stop; arrows move between the weeks and speak them", async ({ page }) => {
    const title = await openPlan(page);
    const chart = page.getByRole("application", { name: /^Price over weeks/ });
    await chart.focus();
    await page.keyboard.press("ArrowRight");
    const spoken = chart.locator("[aria-live=polite]");
    await expect.poll(() => spoken.textContent(), SOON).toMatch(/^Week 1\. ask €[\d,]+\. sold by then in /);
    expect(firstPrice((await spoken.textContent()) ?? "")).toBe(firstPrice(title));
    await page.keyboard.press("End");
    await expect.poll(() => spoken.textContent(), SOON).toMatch(/^Week \d+\. ask €/);
    await page.keyboard.press("Escape");
    expect(await chart.locator(".tip").count()).toBe(0);
    await chart.click();
    await chart
      .locator(".tip")
      .getByText(/^ask €/)
      .waitFor();
    await page.keyboard.press("Tab");
    expect(await chart.evaluate((one) => one.contains(document.activeElement))).toBe(false);
  });

  test("an offer near the asking price is taken, a low one is not, each with its reason", async ({
    page,
  }) => {
    const ask = firstPrice(await openPlan(page));
    const answer = page.locator(".offersaid");
    await page.getByLabel("An offer of").fill(String(ask));
    await expect.poll(() => answer.textContent(), SOON).toMatch(/^Take it\./);
    await page.getByLabel("An offer of").fill(String(Math.round(ask / 4)));
    await expect.poll(() => answer.textContent(), SOON).toMatch(/^(Wait\.|Ask €[\d,]+ back\.)/);
    const told = (await answer.textContent()) ?? "";
    expect(told).toContain("After this offer it would fetch");
    expect(told).not.toContain("NaN");
    await page.getByLabel("An offer of").fill("-5");
    await page.locator(".offer .wrong").waitFor();
  });

  test("terms change the plan, say what stands in where they are empty, and stay", async ({ page }) => {
    await openPlan(page);
    const weeks = page.getByLabel("Weeks until it must be gone");
    const hint = page.locator(".market .field").filter({ has: weeks }).locator(".hint");
    expect(await hint.textContent()).toMatch(/^Left empty: \d+ weeks\./);
    await weeks.fill("3");
    await page.getByText("Not sold in 3 weeks").waitFor();
    await page.reload();
    await page.getByText("Not sold in 3 weeks").waitFor();
    expect(await page.getByLabel("Weeks until it must be gone").inputValue()).toBe("3");
    await page.getByLabel("Weeks until it must be gone").fill("0");
    await page.locator(".market .wrong").waitFor();
    await page.getByText("Not sold in 3 weeks").waitFor();
  });

  test("a seller of another bicycle gets a plan from four answers", async ({ page }) => {
    await page.goto("/selling");
    await page.getByRole("link", { name: "Sell another bicycle" }).click();
    await headed(page, /^What do you sell\?$/);
    // The last answer puts the plan in place of the questions.
    for (const label of ["Hybrid", "2010s", "Aluminium", "Mid"])
      await page.getByRole("radio", { name: label, exact: true }).first().click();
    await headed(page, /(Ask|ask) €\d+, /);
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
    await page.getByRole("radio", { name: /^Made safe/ }).check();
    await headed(page, PLAN);
    await page.getByText("This price counts on checks that are still to be made.").waitFor();
    await page.reload();
    await headed(page, PLAN);
  });

  test("a blocked find is never sold as one to ride; a stopped one has no figure", async ({ page }) => {
    await page.goto("/selling/plum-hybrid");
    await headed(page, PLAN);
    await page.getByRole("radio", { name: /^As found/ }).check();
    await headed(page, /^Not roadworthy, for repair or parts: ask €\d+, /);
    await page.getByText("Not roadworthy: say so in the title.").waitFor();
    const text = page.getByLabel("Text of the advert, yours to change");
    expect(await text.inputValue()).toMatch(/^Not roadworthy, for repair or parts: /);
    await page.goto("/selling/choir-tandem");
    await headed(page, /^It cannot be sold whole\.$/);
    await page.goto("/selling/white-carbon-racer");
    await headed(page, /^Stopped\./);
    expect(await page.locator("main").textContent()).not.toContain("€");
  });

  test("the advert takes the plan's price until another is typed", async ({ page }) => {
    const ask = firstPrice(await openPlan(page));
    const price = page.getByLabel("Asking price", { exact: true });
    expect(await price.inputValue()).toBe(String(ask));
    expect(await page.getByLabel("Text of the advert, yours to change").inputValue()).toContain(
      `Asking price: €${ask}`,
    );
    await price.fill("333");
    await page.getByRole("radio", { name: /^Made safe/ }).check();
    await expect
      .poll(() => page.getByLabel("Text of the advert, yours to change").inputValue(), SOON)
      .toContain("Asking price: €333");
  });

  test("the plan is printed alone on one sheet, invented as it is, with the lowest offer only where shown", async ({
    page,
  }) => {
    await page.addInitScript(() => {
      window.print = () => document.documentElement.setAttribute("data-printed", "");
    });
    await page.emulateMedia({ colorScheme: "dark" });
    await openPlan(page, "orange-racer");
    // As long a plan as anybody makes must fit.
    await page.getByLabel("Weeks until it must be gone").fill("52");
    await page.getByText(/^Not sold in \d\d weeks$/).waitFor();
    await page.getByText("Not sold in 12 weeks").waitFor({ state: "detached" });
    const title = await headed(page, PLAN);
    await page.getByRole("button", { name: "Print the price plan" }).click();
    await page.locator("html[data-printed]").waitFor({ state: "attached" });
    await page.emulateMedia({ media: "print" });
    const sheet = page.locator(".sheets");
    expect(await sheet.getByRole("heading", { level: 1 }).textContent()).toBe(title);
    expect(await sheet.textContent()).toContain("Invented find");
    expect(await sheet.textContent()).not.toContain("Take at least");
    expect(await sheet.locator("img").evaluate((img) => (img as HTMLImageElement).naturalWidth)).toBe(2000);
    expect(await page.locator("#app").isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
    const pdf = await page.pdf({ preferCSSPageSize: true });
    // One page object, besides the tree of pages (ISO 32000-1, 7.7.3.3).
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    // The dialogue has closed: the page is as before.
    expect(await sheet.count()).toBe(0);
    expect(await page.locator("#app").isVisible()).toBe(true);
  });

  testOfFirstVisit("goes on without a signal once the page has been open for a while", async ({ page }) => {
    const online = openPlan(page);
    const engine = await page.waitForEvent("worker");
    const restored = await online;
    // It answers once its script has run.
    await engine.evaluate(() => true);
    await page.context().setOffline(true);
    await page.getByRole("radio", { name: /^Made safe/ }).check();
    await expect.poll(() => page.getByRole("heading", { level: 1 }).textContent(), SOON).not.toBe(restored);
    await headed(page, PLAN);
    await expect.poll(() => page.locator(".workedout").textContent(), SOON).toMatch(/on this/);
    expect(await page.getByRole("alert").count()).toBe(0);
  });

  test("has nothing that axe finds and nothing wider than the screen, light and dark, and with text twice as large", async ({
    page,
  }) => {
    await openPlan(page);
    await page.getByRole("button", { name: "Show the lowest offer" }).click();
    await page.getByLabel("An offer of").fill("120");
    await page.getByText("€120 in week 1").waitFor();
    await expectSound(page);
    // As a browser does that is told to write twice as large: the page's breaks move along.
    const devTools = await page.context().newCDPSession(page);
    await devTools.send("Page.setFontSizes", { fontSizes: { standard: 32 } });
    await expect
      .poll(() => page.evaluate(() => getComputedStyle(document.documentElement).fontSize), SOON)
      .toBe("32px");
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth), SOON)
      .toBeLessThanOrEqual(1280);
  });
});
