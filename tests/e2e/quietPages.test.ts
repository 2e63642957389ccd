import { expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

/** Pages before there is an answer, and two that lead nowhere: address and heading. What looks alike is looked at once. */
const QUIET = [
  ["/describe", /four picks/],
  ["/selling", /^Which one do you sell\?$/],
  ["/selling/alone", /^What do you sell\?$/],
  ["/describe/nothing", /^There is no find of yours by that name/],
  ["/shared#AXic", /^This link is cut or altered\.$/],
] as const;

test("pages that hold no answer: nothing that axe finds, nothing wider than the screen, and a way on", async ({
  page,
}) => {
  for (const [path, heading] of QUIET) {
    await page.goto(path);
    await headed(page, heading);
    await expectSound(page, { state: path });
    expect(await page.locator("main").locator("a, button, input").count(), path).toBeGreaterThan(0);
  }
});

test("the box of the hourly goal, with what is wrong in it", async ({ page }) => {
  await page.goto("/selling");
  await page.getByRole("button", { name: /your hourly goal/ }).click();
  await page.getByLabel("What one more hour must earn", { exact: true }).fill("abc");
  await page.getByText(/^This is no number/).waitFor();
  await expectSound(page, { place: ".goalbox" });
});

test("the verdict on a find to leave", async ({ page }) => {
  await page.goto("/finds/canal-shopper");
  await headed(page, /^Leave the canal shopper/);
  await page.getByRole("region", { name: "Verdict", exact: true }).waitFor();
  await expectSound(page, { place: ".verdict" });
});
