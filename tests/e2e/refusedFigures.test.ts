import type { Locator } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { openDescribed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

/** A steel racer of the top tier: worth restoring. */
const RACER = ["Road racing", "1980s", "Steel", "Top"];

/** A field that is refused holds what was typed, and says by its label why. */
async function expectRefused(field: Locator, typed: string, label: string): Promise<void> {
  await field.waitFor();
  expect(await field.inputValue()).toBe(typed);
  const why = field.locator(
    "xpath=ancestor::div[contains(concat(' ', @class, ' '), ' field ')][1]//p[@role='alert']",
  );
  await why.waitFor();
  expect(await why.textContent()).toMatch(new RegExp(`^${label}: must be `));
  expect(await field.getAttribute("aria-invalid")).toBe("true");
}

describe("a figure that was refused and kept", () => {
  test("of the terms of selling is there after a reload, with its reason, and can be mended", async ({
    page,
  }) => {
    const label = "Weeks until it must be gone";
    await page.goto("/selling/plum-hybrid");
    const weeks = page.getByLabel(label);
    await weeks.fill("0");
    await expectRefused(weeks, "0", label);
    await page.reload();
    await expectRefused(weeks, "0", label);
    await page
      .getByRole("alert")
      .filter({ hasText: `${label}: must be at least 1` })
      .first()
      .waitFor();
    await expectSound(page, { place: "main", widths: [390] });
    await weeks.fill("3");
    await page.getByText("Not sold in 3 weeks").waitFor();
  }, 60_000);

  test("of the work begun is there after a reload, with its reason, and can be mended", async ({ page }) => {
    await openDescribed(page, RACER, /^Restore it: /);
    await page.getByRole("link", { name: "See the whole answer" }).click();
    const work = page.locator("details.begun");
    await work.locator("summary").click();
    const money = page.getByLabel("Money spent");
    await money.fill("9999999999");
    await expectRefused(money, "9999999999", "Money spent");
    await page.reload();
    await expectRefused(money, "9999999999", "Money spent");
    await expectSound(page, { place: "main", widths: [390] });
    await money.fill("30");
    await page.getByText("Already spent €30").first().waitFor();
  }, 60_000);
});
