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

test("what a quick hand types as soon as a field stands is kept", async ({ page }) => {
  await page.goto("/selling");
  const pill = page.getByRole("button", { name: /your hourly goal/ });
  await pill.evaluate(async (button: HTMLElement) => {
    button.click();
    // Drawn, but not yet painted.
    await new Promise((resolve) => queueMicrotask(() => queueMicrotask(() => resolve(null))));
    const field = document.querySelector<HTMLInputElement>(".goalbox input")!;
    field.value = "abc";
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  });
  await page.getByText(/^This is no number/).waitFor();
  await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 200)));
  expect(await page.locator(".goalbox input").inputValue()).toBe("abc");
});

test("the verdict on a find to leave", async ({ page }) => {
  await page.goto("/finds/canal-shopper");
  await headed(page, /^Leave the canal shopper/);
  await page.getByRole("region", { name: "Verdict", exact: true }).waitFor();
  await expectSound(page, { place: ".verdict" });
});
