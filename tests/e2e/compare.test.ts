import { readFile } from "node:fs/promises";
import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed, said, setGoal } from "./setup/dashboard.ts";
import { expectSound, WIDTHS } from "./setup/sound.ts";

const SIX = [
  "plum-hybrid",
  "ferry-shed-roadster",
  "orange-racer",
  "choir-tandem",
  "canal-shopper",
  "white-carbon-racer",
];
const FIRST_FOUR = ["Plum hybrid", "Copper track bike", "Ferry-shed roadster", "Orange racer"];

/** Opens the page with its chart, on the finds given or else as on the first visit. */
async function openCompare(page: Page, ids?: readonly string[]): Promise<void> {
  if (ids !== undefined) {
    const kept = JSON.stringify(ids);
    await page.addInitScript((text) => localStorage.setItem("spokeworth.compared", text), kept);
  }
  await page.goto("/compare");
  await chart(page).waitFor();
}

const chart = (page: Page) => page.getByRole("application", { name: /^Margin per hour by find/ });
const names = (page: Page) => page.locator(".heads a").allInnerTexts();
const measure = (page: Page, name: string | RegExp): Locator => page.getByRole("region", { name });

describe("side by side", () => {
  test("opens on the four best earners with a sentence, margin per hour on top and every measure for each", async ({
    page,
  }) => {
    await page.goto("/");
    await page.getByRole("link", { name: "Side by side" }).first().click();
    await headed(page, /^The plum hybrid is the surest\. The orange racer could earn most or lose most/);
    expect((await names(page)).sort()).toEqual([...FIRST_FOUR].sort());
    for (const label of [
      "Misses your goal",
      "Margin whole job",
      "Your hours",
      "Cash in it",
      "Price",
      "Risk",
    ]) {
      const cells = measure(page, new RegExp(`^${label}`)).locator(".cell");
      expect(await cells.count(), label).toBe(4);
      for (const text of await cells.locator(".val").allInnerTexts())
        expect(text, label).toMatch(/\d|nothing/);
    }
    const blocks = await page.locator(".compare h3").allInnerTexts();
    expect(blocks[0]).toBe("Margin per hour");
    await page.getByText("The orange racer is hardly looked at.").waitFor();
    const [first] = await page.locator(".described h3").allInnerTexts();
    expect(first?.trim()).toBe("Kind");
    await page.getByText("Show as a table").click();
    expect(await page.getByRole("row").count()).toBe(5);
    await page.getByRole("link", { name: "Choose a set" }).click();
    await page.waitForURL("**/together");
  });

  test("follows the goal, and is moved in by arrow keys from one tab stop", async ({ page }) => {
    await openCompare(page);
    await setGoal(page, 19);
    await page.getByRole("application", { name: /cross the goal of €19/ }).waitFor();
    await page.getByText("goal €19", { exact: true }).waitFor();
    await chart(page).focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    const spoken = page.locator(".ratearea [aria-live]");
    const second = (await names(page))[1] ?? "";
    expect(await spoken.textContent()).toContain(`${second}. `);
    await page.keyboard.press("Enter");
    await page.waitForURL("**/finds/*");
  });

  test("takes finds in and drops them, two at least and six at most, and keeps them over a reload", async ({
    page,
  }) => {
    await openCompare(page);
    await page.getByRole("button", { name: "Add or drop" }).click();
    const box = (name: string) => page.getByRole("checkbox", { name });
    await box("Orange racer").uncheck();
    await box("Canal shopper").check();
    await box("Yellow folder").check();
    await box("Choir tandem").check();
    await page.getByText("Six stand side by side").waitFor();
    expect(await box("Orange racer").isDisabled()).toBe(true);
    for (const name of ["Plum hybrid", "Copper track bike", "Ferry-shed roadster", "Yellow folder"]) {
      await box(name).uncheck();
    }
    expect(await box("Canal shopper").isDisabled()).toBe(true);
    expect(await names(page)).toEqual(["Canal shopper", "Choir tandem"]);
    await headed(page, /^Leave the other\. The choir tandem misses your €\d+ an hour in \d of 10\.$/);
    await page.reload();
    await chart(page).waitFor();
    expect(await names(page)).toEqual(["Canal shopper", "Choir tandem"]);
  });

  test("tells a stop before any money and shows no figure of that find", async ({ page }) => {
    await openCompare(page, ["plum-hybrid", "white-carbon-racer"]);
    await headed(page, /^The white carbon racer is stopped\. The plum hybrid misses/);
    const text = await said(page);
    expect(text.indexOf("White carbon racer: stopped.")).toBeLessThan(text.indexOf("Margin per hour"));
    for (const cell of await page.locator(".meas .cell").filter({ hasText: "White carbon racer" }).all()) {
      expect(await cell.textContent()).not.toMatch(/€\s?\d/);
    }
  });

  test("says in one line where fewer than two are left", async ({ page }) => {
    await page.addInitScript(() => localStorage.setItem("spokeworth.compared", '["plum-hybrid","gone"]'));
    await page.goto("/compare");
    await headed(page, /^Choose two finds or more to set them side by side\.$/);
    await page.getByRole("checkbox", { name: "Yellow folder" }).check();
    await headed(page, /^The plum hybrid is the surest/);
  });

  test("is saved as a file with a row a find", async ({ page }) => {
    await openCompare(page);
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as CSV" }).click(),
    ]);
    expect(file.suggestedFilename()).toBe("side-by-side.csv");
    const text = await readFile(await file.path(), "utf8");
    expect(text).toMatch(/^\ufefffind,invented,decision,.*margin per hour \(EUR\/h\)/);
    expect(text).toMatch(/^Plum hybrid,yes,Make safe,/m);
    expect(text.trim().split("\r\n")).toHaveLength(5);
  });

  test("a copy stands beside its original with the same figures, and one changed answer sets them apart", async ({
    page,
  }) => {
    await openCompare(page);
    await page.getByRole("button", { name: /^Copy it.*Plum hybrid$/ }).click();
    await page.waitForURL("**/describe/own-*");
    expect(await page.getByLabel("Name on the chart (optional)").inputValue()).toBe(
      "Copy of Plum hybrid (invented)",
    );
    await headed(page, /^Make .* safe: €\d+ an hour/);
    await page.getByRole("link", { name: "Side by side" }).first().click();
    await chart(page).waitFor();
    expect((await names(page)).slice(0, 2)).toEqual(["Plum hybrid", "Copy of Plum hybrid (invented)"]);
    await page.getByText("copy of an invented find", { exact: true }).waitFor();
    const rates = page.locator(".rates .num");
    expect(await rates.nth(1).textContent()).toBe(await rates.nth(0).textContent());

    await page.goBack();
    await page.getByRole("radio", { name: "Top", exact: true }).check();
    await page.getByRole("link", { name: "Side by side" }).first().click();
    await chart(page).waitFor();
    await page.waitForFunction(() => {
      const [original, copy] = [...document.querySelectorAll(".rates .num")];
      return original?.textContent !== copy?.textContent;
    });
  });

  test("a find is copied from its own page too", async ({ page }) => {
    await page.goto("/finds/yellow-folder");
    await page.getByRole("button", { name: "Copy to ask what if" }).click();
    await page.waitForURL("**/describe/own-*");
    await page.goto("/compare");
    await chart(page).waitFor();
    expect((await names(page)).slice(-2)).toEqual(["Yellow folder", "Copy of Yellow folder (invented)"]);
  });

  test("six finds stand on a page that axe finds nothing on and that scrolls down alone, at 390 and 1280 pixels", async ({
    page,
  }) => {
    await openCompare(page, SIX);
    await page.getByRole("button", { name: "Add or drop" }).click();
    for (const details of ["Show as a table", "Details in which they differ"]) {
      await page.getByText(details).click();
    }
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 844 });
      await chart(page).waitFor();
      await expectSound(page, { widths: [width] });
      const small = await page
        .locator("main button, main .tick, main .heads a, main summary")
        .evaluateAll(
          (all) =>
            all.filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44)
              .length,
        );
      expect(small, `${width}: targets under 44 px`).toBe(0);
    }
  });
});
