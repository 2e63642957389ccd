import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

/** Pages before there is an answer, and those that lead nowhere: address and heading. */
const QUIET = [
  ["/describe", /four picks/],
  ["/selling", /^Which one do you sell\?$/],
  ["/selling/alone", /^What do you sell\?$/],
  ["/prices", /^No sale and no price/],
  ["/no/such/page", /^There is no page at this address\.$/],
  ["/finds/nothing", /^There is no find here by that name\.$/],
  ["/describe/nothing", /^There is no find of yours by that name/],
  ["/shared#AXic", /^This link is cut or altered\.$/],
] as const;

describe("pages that hold no answer, at 390 and 1280 pixels, light and dark", () => {
  for (const [path, heading] of QUIET) {
    test(`${path}: nothing that axe finds, nothing wider than the screen, and a way on`, async ({ page }) => {
      await page.goto(path);
      await headed(page, heading);
      await expectSound(page);
      expect(await page.locator("main").locator("a, button, input").count()).toBeGreaterThan(0);
    });
  }
});

describe("verdicts of each kind", () => {
  for (const [id, heading] of [
    ["canal-shopper", /^Leave the canal shopper/],
    ["orange-racer", /orange racer/],
  ] as const) {
    test(`${id}: nothing that axe finds in its verdict, in both themes`, async ({ page }) => {
      await page.goto(`/finds/${id}`);
      await headed(page, heading);
      await page.getByRole("region", { name: "Verdict", exact: true }).waitFor();
      await expectSound(page, { place: ".verdict" });
    });
  }

  test("the hourly goal, open", async ({ page }) => {
    await page.goto("/selling");
    await page.getByRole("button", { name: /your hourly goal/ }).click();
    await page.getByLabel("What one more hour must earn", { exact: true }).fill("abc");
    await page.getByText(/^This is no number/).waitFor();
    await expectSound(page, { place: ".goalbox" });
  });
});
