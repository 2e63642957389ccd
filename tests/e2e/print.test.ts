import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

/** Opens a find and the box that prints it; the browser's own print dialogue stays shut. */
async function openPrint(page: Page, id: string): Promise<Locator> {
  await page.addInitScript(() => {
    window.print = () => undefined;
  });
  await page.goto(`/finds/${id}`);
  await page.getByRole("button", { name: "Print" }).click();
  const box = page.getByRole("dialog", { name: "Print for the bench" });
  await box.waitFor();
  return box;
}

/** How many A4 pages the page prints on. */
async function pagesOf(page: Page): Promise<number> {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  // 210 by 297 mm in points.
  expect(pdf).toMatch(/\/MediaBox ?\[0 0 59[45](\.\d+)? 84[12](\.\d+)?\]/);
  return pdf.match(/\/Type ?\/Page\b(?!s)/g)?.length ?? 0;
}

describe("sheets for the bench", () => {
  test("are printed as chosen, each on paper of its own, and then the page is as before", async ({
    page,
  }) => {
    const box = await openPrint(page, "plum-hybrid");
    await box.getByRole("checkbox", { name: /^Inspection sheet/ }).check();
    await box.getByRole("button", { name: "Print 3 sheets" }).click();
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
    await page.emulateMedia({ media: "print" });
    const sheets = page.locator(".sheets > section");
    expect(await sheets.getByRole("heading", { level: 1 }).allInnerTexts()).toEqual([
      "Inspection sheet: Plum hybrid",
      "Job sheet: Plum hybrid",
      "Shopping list: Plum hybrid",
    ]);
    expect(await page.locator("#app").isVisible()).toBe(false);
    const pages = await pagesOf(page);
    expect(pages).toBeGreaterThanOrEqual(6);
    expect(pages).toBeLessThanOrEqual(12);
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    expect(await page.locator(".sheets").count()).toBe(0);
    await page.emulateMedia({ media: "screen" });
    expect(await page.locator("#app").isVisible()).toBe(true);
  });

  test("say what is invented, what the job is, what to measure and what to buy", async ({ page }) => {
    const box = await openPrint(page, "plum-hybrid");
    await box.getByRole("button", { name: "Print 2 sheets" }).click();
    await page.emulateMedia({ media: "print" });
    const job = page.locator(".jobsheet");
    const text = (await job.textContent()) ?? "";
    for (const words of [
      "Invented find. Prices, times and chances are invented demo data",
      "New brake pads",
      "5 to 8 N m, pad fixing nuts; a marked value rules.",
      "Decide again: you can still change course after this.",
      "As it stands nobody may ride it.",
      "Brake inner cable: cured and looked at again",
      "Final check:",
    ])
      expect(text).toContain(words);
    // Warnings come before work.
    expect(text.indexOf("Brakes faulty or taken apart")).toBeLessThan(text.indexOf("New brake pads"));
    const shopping = await page.locator(".shoppingsheet").textContent();
    for (const words of ["All prices are invented demo data", "Measure first", "8 sprockets", "In all"])
      expect(shopping).toContain(words);
    expect(shopping).toMatch(/Chain\s*1\s*€\d+\.\d\d/);
  });

  test("of another course hold its work", async ({ page }) => {
    const box = await openPrint(page, "canal-shopper");
    await box.getByRole("radio", { name: "Restore" }).check();
    await box.getByRole("checkbox", { name: /^Shopping list/ }).uncheck();
    await box.getByRole("button", { name: "Print one sheet" }).click();
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".jobsheet header").textContent()).toContain("Restore: likely between");
    // Work that may never end says when to stop.
    expect(await page.locator(".jobsheet").textContent()).toMatch(/Stop trying to .* after \d+ min/);
  });

  test("of a stopped find are its checks alone, without money", async ({ page }) => {
    const box = await openPrint(page, "white-carbon-racer");
    expect(await box.getByRole("checkbox").count()).toBe(1);
    await box.getByRole("checkbox", { name: /^Inspection sheet/ }).check();
    await box.getByRole("button", { name: "Print one sheet" }).click();
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".sheets").textContent()).not.toContain("€");
  });

  test("are blank for a kind of bike that is no find yet", async ({ page }) => {
    await page.addInitScript(() => {
      window.print = () => undefined;
    });
    await page.goto("/");
    await page.getByRole("link", { name: /^Print a blank inspection sheet/ }).click();
    await headed(page, /^Which bike will you look at\?$/);
    expect(await page.getByRole("button", { name: "Print the sheet" }).count()).toBe(0);
    await page.getByRole("combobox").first().selectOption({ label: "Hybrid" });
    await page.getByRole("heading", { name: /^\d+ checks, about \d+ minutes\.$/ }).waitFor();
    await page.getByRole("button", { name: "Print the sheet" }).click();
    await page.emulateMedia({ media: "print" });
    const text = await page.locator(".inspection").textContent();
    expect(text).toMatch(/^Inspection sheet: Hybrid/);
    expect(text).not.toContain("Invented find");
    expect(await page.locator(".inspection .box path").count()).toBe(0);
  });

  test("are chosen in a box with nothing that axe finds, in both themes, at 390 and 1280 pixels", async ({
    page,
  }) => {
    await openPrint(page, "plum-hybrid");
    await expectSound(page, { place: "dialog" });
    await page.goto("/sheets");
    await headed(page, /^Which bike/);
    await expectSound(page);
  });
});
