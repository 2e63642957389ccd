import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const WARNING = "Not roadworthy: for repair or parts; not to be ridden as it is.";

/** Opens a find and unfolds the draft of its advert. */
async function openListing(page: Page, id: string): Promise<Locator> {
  await page.goto(`/finds/${id}`);
  await headed(page, /\.$/);
  const panel = page.getByRole("region", { name: /^When you sell it/ });
  await panel.getByText("Draft of the advert").click();
  await panel.locator(".listing").waitFor();
  return panel;
}

describe("the draft of an advert", () => {
  test("follows the state and the jobs done, takes a price, keeps what was typed, and is copied whole", async ({
    page,
  }) => {
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    const panel = await openListing(page, "plum-hybrid");
    const text = panel.getByLabel("Text of the advert, yours to change");
    expect(await panel.getByRole("radio", { name: /^Made safe/ }).isChecked()).toBe(true);
    expect(await text.inputValue()).not.toContain("roadworthy");

    await panel.getByText(/^Jobs told as done: \d+ of \d+$/).click();
    await panel.getByLabel("New brake pads").uncheck();
    await expect.poll(() => text.inputValue()).toContain(WARNING);
    await panel.getByLabel("New brake pads").check();
    await expect.poll(() => text.inputValue()).not.toContain(WARNING);

    await panel.getByRole("radio", { name: /^As found/ }).check();
    await panel.getByLabel("Asking price", { exact: true }).fill("70");
    await expect.poll(() => text.inputValue()).toContain("Asking price: €70");
    const drafted = await text.inputValue();
    expect(drafted).toMatch(/^Not roadworthy, for repair or parts: Hybrid, 2010s/);
    for (const words of [WARNING, "Brake inner cable (stops riding)", "5 checks not made:", "Invented find"])
      expect(drafted).toContain(words);

    await text.fill(`${drafted}\nThe bell is from another bike.`);
    await panel.getByRole("button", { name: "Copy the text" }).click();
    await panel.getByText("Copied.", { exact: true }).waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
      `${drafted}\nThe bell is from another bike.`,
    );
    await panel.getByRole("button", { name: "Write it anew" }).click();
    expect(await text.inputValue()).toBe(drafted);
  });

  test("is selected where the browser lets nothing be copied", async ({ page }) => {
    await page.addInitScript(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error("refused"));
    });
    const panel = await openListing(page, "yellow-folder");
    await panel.getByRole("button", { name: "Copy the text" }).click();
    await panel.getByText(/The text is selected/).waitFor();
    const area = panel.getByRole("textbox", { name: /^Text of the advert/ });
    const isAllSelected = () =>
      area.evaluate((one) => {
        const { selectionStart, selectionEnd, value } = one as HTMLTextAreaElement;
        return selectionStart === 0 && selectionEnd === value.length && document.activeElement === one;
      });
    await expect.poll(isAllSelected).toBe(true);
  });

  test("prints its sheets and nothing else of the page, and then the page is as before", async ({ page }) => {
    await page.addInitScript(() => {
      window.print = () => undefined;
    });
    const panel = await openListing(page, "choir-tandem");
    await panel.getByRole("button", { name: "Print the sheets" }).click();
    await page.emulateMedia({ media: "print" });
    const sheets = page.locator(".sheets");
    expect(await sheets.getByRole("heading", { level: 1 }).allInnerTexts()).toEqual([
      "Listing",
      "Bill of sale",
      "Work done and limits",
    ]);
    expect(await sheets.textContent()).toContain("The frame is not sold.");
    expect(await page.locator("#app").isVisible()).toBe(false);
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    expect(await sheets.count()).toBe(0);
    expect(await page.locator("#app").isVisible()).toBe(true);
  });

  test("is refused for a stopped find, with the reason", async ({ page }) => {
    const panel = await openListing(page, "white-carbon-racer");
    await panel.getByText("No draft. Serial number: filed, drilled or over-stamped.").waitFor();
    expect(await panel.getByRole("textbox").count()).toBe(0);
  });

  test("has nothing that axe finds and nothing wider than the screen, at 390 and 1280 pixels, light and dark", async ({
    page,
  }) => {
    const panel = await openListing(page, "plum-hybrid");
    await panel.getByText(/^Jobs told as done/).click();
    await expectSound(page, { place: ".listing" });
  });
});
