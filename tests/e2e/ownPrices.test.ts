import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed, openFinds } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const SALES = [
  "price;currency;kind;date;name;category",
  "145,50;EUR;paid;2026-03-14;Hill racer;road racing",
  "0;EUR;paid;2026-03-15;Given away;hybrid",
  "90;EUR;asked;2026-04-02;Shopper;small-wheel shopper",
  "90;GBP;asked;2026-04-02;Abroad;hybird",
].join("\r\n");
const BOOK = "part,price,currency\nchain,7.77,EUR\ntyre,11.11,EUR\nchian,3,EUR\n";

async function upload(page: Page, name: string, text: string): Promise<void> {
  const buffer = Buffer.from(text);
  await page.getByLabel(/^Choose a file/).setInputFiles({ name, mimeType: "text/csv", buffer });
}

/** The text of the file that a button hands out. */
async function downloaded(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), "utf8") };
}

describe("own prices", () => {
  test("from a file with good and bad rows: both are told, the good survive a reload, the bad are handed back", async ({
    page,
  }) => {
    await openFinds(page);
    await page.getByRole("link", { name: "use my own prices" }).click();
    await headed(page, /^No sale and no price of your own yet/);
    await upload(page, "spring.csv", SALES);
    await headed(page, /^2 sales of your own; the rest is invented$/);
    await page.getByText("2 sales added; 2 rows not kept.").waitFor();
    await page.getByText(/^Line 3, price\. "0" is no price/).waitFor();
    await page.getByText(/^Line 5, currency\. GBP is not EUR/).waitFor();
    await page.getByText(/^Line 5, category\. "hybird" is not known\. The nearest is "hybrid"/).waitFor();
    const rejected = await downloaded(page, "Download the 2 rejected rows");
    expect(rejected.name).toBe("rejected-spring.csv");
    expect(rejected.text).toMatch(/Given away,hybrid,"?price: /);
    expect(rejected.text).not.toContain("Hill racer");

    await page.reload();
    await headed(page, /^2 sales of your own/);
    const list = page.getByRole("list", { name: "2 sales of your own" });
    await list.waitFor();
    // Newest first.
    expect(await list.locator(".ownhead").allInnerTexts()).toEqual([
      expect.stringMatching(/^Shopper\s+€90$/),
      expect.stringMatching(/^Hill racer\s+€145\.50$/),
    ]);
    await upload(page, "spring.csv", SALES);
    await page.getByText("No sale added; 2 rows kept before; 2 rows not kept.").waitFor();
  });

  test("hand out a template, and what is kept, as files that are read back", async ({ page }) => {
    await page.goto("/prices");
    const template = await downloaded(page, "Template for sales");
    expect(template.name).toBe("sales-template.csv");
    expect(template.text).toMatch(
      /^\ufeffprice,currency,kind,date,.*,note\r\n.*Invented example: remove this row\r\n$/,
    );
    await upload(page, template.name, template.text);
    await page.getByText("No sale added; the invented example left out.").waitFor();
    await upload(page, "spring.csv", SALES);
    await headed(page, /^2 sales of your own/);
    const kept = await downloaded(page, "Download your sales");
    await page.getByRole("button", { name: "Remove all" }).click();
    await headed(page, /^No sale and no price/);
    await page.getByText("Removed 2 sales.").waitFor();
    await page.getByRole("button", { name: "Take it back" }).click();
    await headed(page, /^2 sales of your own/);
    await page.getByRole("button", { name: "Remove all" }).click();
    await upload(page, kept.name, kept.text);
    await page.getByText("2 sales added.").waitFor();
    expect(await page.locator(".faults").count()).toBe(0);
  });

  test("are added by hand, told what is missing, tied to a find, and removed one by one", async ({
    page,
  }) => {
    await page.goto("/prices");
    await page.getByText("Add one sale by hand").click();
    await page.getByRole("button", { name: "Add the sale" }).click();
    expect(await page.getByRole("alert").allInnerTexts()).toEqual(["Fill this in.", "Fill this in."]);
    await page.getByLabel("Price", { exact: true }).fill("75");
    await page.getByRole("radio", { name: "Paid" }).check();
    await page.getByLabel("What you call it (optional)").fill("Plum twin");
    await page.getByRole("button", { name: "Add the sale" }).click();
    await page.getByText("Added.", { exact: true }).waitFor();
    await headed(page, /^1 sale of your own/);
    await page.getByText("Same model as a find").click();
    await page.getByRole("checkbox", { name: "Plum hybrid" }).check();
    await page.getByText("Same model as Plum hybrid").waitFor();
    await page.reload();
    await page.getByText("Same model as Plum hybrid").waitFor();
    await page.getByRole("button", { name: "Remove Plum twin" }).click();
    await headed(page, /^No sale and no price/);
    await page.getByText("Removed 1 sale.").waitFor();
  });

  test("of parts are worked out with, and the shopping list says so", async ({ page }) => {
    await page.goto("/prices");
    await upload(page, "book.csv", BOOK);
    await headed(page, /^2 prices of your own; the rest is invented$/);
    await page.getByText(/^Line 4, part\. "chian" is not known\. The nearest is "chain"/).waitFor();
    await page.goto("/finds/copper-track-bike");
    await headed(page, /^Restore/);
    await page.getByText(/^Shopping list: /).click();
    const row = page.getByRole("row").filter({ hasText: "your price" });
    await row.first().waitFor();
    expect((await row.allInnerTexts()).join("\n")).toMatch(/€(7\.77|11\.11)/);
  });

  test("stand on a page that axe finds nothing on and that scrolls down alone, at 390 and 1280 pixels", async ({
    page,
  }) => {
    await page.goto("/prices");
    await upload(page, "spring.csv", SALES);
    await page.getByText("2 sales added; 2 rows not kept.").waitFor();
    for (const details of ["Columns", "Parts by id and name", "Add one sale by hand"]) {
      await page.getByText(details, { exact: true }).click();
    }
    await page.getByRole("button", { name: "Add the sale" }).click();
    await page.getByText("Fill this in.").first().waitFor();
    await expectSound(page);
  });
});
