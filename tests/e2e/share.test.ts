import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed, openCheck, openDescribed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const RACER = ["Road racing", "1980s", "Steel", "Top"];

/** Describes a racer called "Hill racer", asked for at 40, opens its page and the box to share it. */
async function openShare(page: Page): Promise<void> {
  await openDescribed(page, RACER, /^Restore it: /);
  await page.getByLabel("Name on the chart (optional)").fill("Hill racer");
  await page.getByLabel("Asking price, or what you paid").fill("40");
  const check = await openCheck(page, "Headset play and roughness");
  await check.getByRole("radio", { name: /^Loose/ }).check();
  await headed(page, /Hill racer/);
  await page.getByRole("link", { name: "See the whole answer" }).click();
  await page.getByRole("button", { name: "Share" }).click();
  await page.getByRole("dialog", { name: "Share this find" }).waitFor();
}

/** The link that the box shows. */
async function linkOf(page: Page): Promise<string> {
  const field = page.getByRole("dialog").getByLabel(/^The link/);
  await expect.poll(() => field.inputValue(), { timeout: 10_000 }).toMatch(/\/shared#[\w-]+$/);
  return await field.inputValue();
}

describe("a find as a link", () => {
  test("opens in another browser with its answer, is kept there once, and known again", {
    timeout: 60_000,
  }, async ({ page, site, browser }) => {
    await openShare(page);
    const answer = await headed(page, /Hill racer/);
    const box = page.getByRole("dialog");
    await box.getByText("In it: its name, the description, one check made and the €40 asked.").waitFor();
    const link = await linkOf(page);
    expect(link.length).toBeLessThan(600);

    const elsewhere = await browser.newContext({ baseURL: site.href });
    try {
      const other = await elsewhere.newPage();
      other.setDefaultTimeout(20_000);
      await other.goto(link);
      // Both browsers have the same goal and no prices of their own.
      expect(await headed(other, /Hill racer/)).toBe(answer);
      await other.getByText("shared with you; not kept yet").waitFor();
      expect(await other.getByText("Asked: €40.").count()).toBe(1);
      // Nothing is sold of a find that is not kept.
      expect(await other.getByRole("link", { name: "What to ask for it" }).count()).toBe(0);
      await other.getByRole("button", { name: "Keep it" }).click();
      expect(await headed(other, /Hill racer/)).toBe(answer);
      expect(new URL(other.url()).pathname).toMatch(/^\/finds\/shared-/);
      await other.getByText("your own", { exact: true }).waitFor();

      await other.goto(link);
      await other.getByText("You keep this find already.").waitFor();
      expect(await other.getByRole("button", { name: "Keep it" }).count()).toBe(0);
      await other.goto("/");
      await other.locator(".rows > li").first().waitFor();
      expect(await other.getByRole("link", { name: "Hill racer", exact: true }).count()).toBe(1);
    } finally {
      await elsewhere.close();
    }
    // The sender is told that it is theirs.
    await page.goto(link);
    await page.getByText("You keep this find already.").waitFor();
  });

  test("is copied, or selected where the browser lets nothing be copied", async ({ page }) => {
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("button", { name: "Share" }).click();
    const link = await linkOf(page);
    await page.getByRole("button", { name: "Copy the link" }).click();
    await page.getByText("Copied.", { exact: true }).waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error("refused"));
    });
    await page.getByRole("button", { name: "Copy the link" }).click();
    await page.getByText(/The text is selected/).waitFor();
    // An invented find stays invented wherever it goes.
    await page.goto(link);
    await page.getByText("copy of an invented find").waitFor();
  });

  test("goes to the phone's own way of sending where it has one", async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(navigator, "share", {
        value: (what: { url: string }) => {
          document.title = what.url;
          return Promise.resolve();
        },
      });
    });
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("button", { name: "Share" }).click();
    const link = await linkOf(page);
    await page.getByRole("button", { name: "Send the link" }).click();
    await expect.poll(() => page.title()).toBe(link);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Share");
  });

  test("says what is wrong with it where it is cut, newer or none, and what to do", async ({ page }) => {
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("button", { name: "Share" }).click();
    const link = await linkOf(page);
    await page.goto(link.slice(0, -40));
    await headed(page, /^This link is cut or altered\.$/);
    await page.getByText(/ask for it to be sent again/).waitFor();
    // Another link on the same page.
    await page.evaluate(() => {
      location.hash = "#AgECAw";
    });
    await headed(page, /^This link was made by a newer page than yours\.$/);
    await page.evaluate((whole) => {
      location.href = whole;
    }, link);
    await page.getByText("shared with you; not kept yet").waitFor();
    await page.goto("/shared");
    await headed(page, /^There is no find in this address\.$/);
  });

  test("the box has nothing that axe finds and nothing wider than the screen, in both themes", async ({
    page,
  }) => {
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("button", { name: "Share" }).click();
    await linkOf(page);
    await expectSound(page, { place: "dialog" });
  });

  test("and so has the page it opens", async ({ page }) => {
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("button", { name: "Share" }).click();
    await page.goto(await linkOf(page));
    await page.getByText("shared with you; not kept yet").waitFor();
    await page.getByRole("region", { name: /^Not looked at, and likeliest at fault/ }).waitFor();
    await expectSound(page, { place: "main" });
  });
});

describe("finds as a file", () => {
  test("go out whole and come back in another browser; a file read again adds nothing, and nothing is overwritten", async ({
    page,
    site,
    browser,
  }) => {
    await openShare(page);
    await page.getByRole("button", { name: "Close" }).click();
    await page.goto("/");
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save your one find" }).click();
    const path = await (await saving).path();
    const saved = JSON.parse(readFileSync(path, "utf8"));
    expect(saved).toMatchObject({ format: "spokeworth-finds", version: 1, finds: [{ name: "Hill racer" }] });

    const elsewhere = await browser.newContext({ baseURL: site.href });
    try {
      const other = await elsewhere.newPage();
      other.setDefaultTimeout(20_000);
      await other.goto("/");
      const file = other.getByLabel(/^Open a file of finds/);
      const open = (name: string, contents: unknown) =>
        file.setInputFiles({
          name,
          mimeType: "application/json",
          buffer: Buffer.from(typeof contents === "string" ? contents : JSON.stringify(contents)),
        });
      await open("finds.json", saved);
      await other.getByText("In this file: one find taken.").waitFor();
      await other.getByRole("link", { name: "Hill racer", exact: true }).waitFor();
      await open("finds.json", saved);
      await other.getByText("In this file: one find here already.").waitFor();

      const [find] = saved.finds;
      const changed = { ...find, answers: { ...find.answers, price: 55, mood: "good" } };
      await open("changed.json", { ...saved, finds: [changed, { name: "no id" }] });
      await other.getByText("In this file: one find kept beside yours and one entry not read.").waitFor();
      await other.getByText(/“Hill racer \(from a file\)”\. Not read: "answers\/mood"\./).waitFor();
      await other.getByText("Entry 2 of the file is no find: it has no id. Not taken.").waitFor();
      await other.getByRole("link", { name: "Hill racer", exact: true }).waitFor();
      await other.getByRole("link", { name: "Hill racer (from a file)" }).waitFor();

      await open("other.txt", "name,price\n");
      await other.getByText(/This file is no JSON/).waitFor();
      await open("newer.json", { ...saved, version: 9 });
      await other.getByText(/saved by a newer page than yours/).waitFor();
    } finally {
      await elsewhere.close();
    }
  });
});
