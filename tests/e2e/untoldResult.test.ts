import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed, openDescribed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const RACER = ["Road racing", "1980s", "Steel", "Upper"];
const QUERY = /^Record serial number, query official register/;
const UNTOLD = "The test is done; its result is not told yet.";
const SAY = "Say what it showed: serial number";

/** Puts a racer on the stand whose serial number was read and not yet asked about. */
async function notQueried(page: Page): Promise<void> {
  await openDescribed(page, RACER, /^Restore it: /);
  await page.getByRole("link", { name: "On the stand" }).click();
  await headed(page, /^Not looked at yet/);
  await page.getByLabel("Find a check").fill("Serial number");
  const row = page.locator("#check-serial");
  await row.locator("summary").first().click();
  await row.getByRole("button", { name: /not (yet )?queried|not asked/i }).click();
}

describe("a query that is ticked as done", () => {
  test("leads to its check, on the stand and on the find's page, until its result is told", async ({
    page,
  }) => {
    await notQueried(page);
    const work = page.locator("#work");
    await work.getByRole("checkbox", { name: QUERY }).check();
    await work.getByText(UNTOLD).waitFor();
    await page.locator("#ready").getByText(UNTOLD).waitFor();
    await expectSound(page, { place: "main", widths: [390] });

    await page.getByRole("link", { name: "Money and hours spent are told on its page" }).click();
    const begun = page.locator("details.begun");
    await begun.getByText(UNTOLD).waitFor();
    await begun.getByRole("link", { name: SAY }).click();
    await page.locator("#check-serial .checkbody").waitFor();

    await page.locator("#work").getByRole("button", { name: SAY }).click();
    const row = page.locator("#check-serial");
    const line = row.locator("summary").first();
    await expect.poll(() => line.evaluate((one) => document.activeElement === one)).toBe(true);
    await row.getByRole("button", { name: /^Clear/ }).click();
    await expect.poll(() => page.getByText(UNTOLD).count()).toBe(0);
    expect(await page.locator("#work").getByRole("checkbox", { name: QUERY }).isChecked()).toBe(true);
  }, 60_000);
});
