import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { recordsIn } from "../../dashboard/ownPrices/records.ts";
import { test } from "./setup/browserTest.ts";
import { headed, setGoal } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

/** Opens the page and waits for its first answer. */
async function openTogether(page: Page): Promise<Locator> {
  await page.goto("/together");
  await headed(page, /fit/);
  return page.getByRole("region", { name: /^Take / });
}

/** The chosen, by name, from the first list of the set. */
function chosenIn(set: Locator): Promise<string[]> {
  return set.locator(".setlist").first().locator(".setitem .setname a").allInnerTexts();
}

describe("which together", () => {
  test("is reached from the finds; the set follows hours, cash, places and aim, and stays after a reload", async ({
    page,
  }) => {
    await page.goto("/");
    await page.getByRole("link", { name: "Which together" }).click();
    await headed(
      page,
      /^Two fit\. One more hour is worth nothing yet; .* would bring in the copper track bike\.$/,
    );
    const set = page.getByRole("region", { name: /^Take / });
    expect(await chosenIn(set)).toEqual(["Plum hybrid", "Yellow folder"]);
    await page.getByText(/Takes longer than your 8 h in \d of 10\. For 8 in 10, plan/).waitFor();

    const hours = page.getByRole("slider", { name: "Hours" });
    await hours.focus();
    for (let presses = 0; presses < 9; presses += 1) await page.keyboard.press("ArrowLeft");
    expect(await hours.getAttribute("aria-valuetext")).toBe("3.5 h");
    await expect.poll(() => chosenIn(set)).not.toContain("Plum hybrid");

    await page.getByLabel("Hours, exact").fill("16");
    await page.getByRole("checkbox", { name: "No limit on cash" }).check();
    await page.getByLabel("Places on the floor, exact").fill("5");
    await headed(page, /^Three fit\..* h more would bring in the ferry-shed roadster\.$/);
    await page.getByRole("radio", { name: /^Money left/ }).check();
    await headed(page, /^Three fit\..* h more would bring in the yellow folder\.$/);
    await page.reload();
    await headed(page, /^Three fit\..* h more would bring in the yellow folder\.$/);
    expect(await page.getByLabel("Hours, exact").inputValue()).toBe("16");
  });

  test("a find is held to a course or left; what does not fit together says how to get out", async ({
    page,
  }) => {
    const set = await openTogether(page);
    await set.getByLabel("Plum hybrid: held to").selectOption("leave");
    await set.getByText("You leave it in any case.").waitFor();
    expect(await chosenIn(set)).not.toContain("Plum hybrid");

    await set.getByLabel("Canal shopper: held to").selectOption("sell-as-found");
    await expect.poll(() => chosenIn(set)).toContain("Canal shopper");
    await set.getByLabel("Copper track bike: held to").selectOption("restore");
    await headed(page, /^What you hold to does not fit together: .* too little\.$/);
    await page.getByRole("button", { name: "Free the copper track bike" }).click();
    await headed(page, /^(One fits|Two fit)\b/);
    await expect
      .poll(() => chosenIn(page.getByRole("region", { name: /^Take / })))
      .toContain("Canal shopper");
  });

  test("a stopped find is told without a figure", async ({ page }) => {
    const set = await openTogether(page);
    const warning = set.locator(".warning.stop");
    expect(await warning.textContent()).toMatch(
      /^White carbon racer: stopped\. Serial number: .* No figure is worked out\./,
    );
    expect(await warning.textContent()).not.toContain("€");
  });

  test("an amount that cannot be is refused beside its field, and the last one stands; axe finds nothing and nothing is wider than the screen, at 390 and 1280 pixels, light and dark", async ({
    page,
  }) => {
    await openTogether(page);
    await page.getByLabel("Places on the floor, exact").fill("1.5");
    await page.getByText("Set a whole number between 0 and 10,000, or take no limit.").waitFor();
    await expectSound(page);
    expect(await page.getByRole("slider", { name: "Places on the floor" }).inputValue()).toBe("2");
  });

  test("another goal moves the flag and the set", async ({ page }) => {
    await openTogether(page);
    await setGoal(page, 40);
    await headed(page, /^None of seven pays your €40 an hour\.$/);
    expect(await page.locator(".planetext.flag").allInnerTexts()).toEqual([
      "your goal €40/h",
      "your goal €40/h",
    ]);
  });

  test("each chart is one tab stop; arrows move between its marks and speak them, Enter opens the find", async ({
    page,
  }) => {
    await openTogether(page);
    const charts = page.getByRole("application");
    expect(await charts.count()).toBe(3);
    for (const place of [0, 1, 2]) {
      const chart = charts.nth(place);
      await chart.focus();
      await page.keyboard.press("ArrowRight");
      await expect
        .poll(() => chart.locator("[aria-live=polite]").textContent())
        .toMatch(/^Plum hybrid\. Make safe, chosen\. /);
      await page.keyboard.press("End");
      await expect.poll(() => chart.locator("[aria-live=polite]").textContent()).toMatch(/^Canal shopper\. /);
    }
    await page.keyboard.press("Enter");
    await headed(page, /canal shopper/);
  });

  test("each chart becomes a picture of its own, and the set a file", async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await openTogether(page);
    for (const name of ["merit-order", "money-against-hours", "price-against-cash"]) {
      const panel = page.locator(`section[aria-labelledby=${name}-title]`);
      const [file] = await Promise.all([
        page.waitForEvent("download"),
        panel.getByRole("button", { name: /^Save as a picture/ }).click(),
      ]);
      expect(file.suggestedFilename()).toBe(`${name}.png`);
      const png = readFileSync((await file.path())!);
      // Signature, and width and height of its first chunk (PNG specification, 5.2 and 11.2.2).
      expect(png.subarray(0, 8).toString("hex")).toBe("89504e470d0a1a0a");
      expect(png.readUInt32BE(16)).toBe(2000);
      expect(png.readUInt32BE(20)).toBeGreaterThan(1200);
      expect(await coloursOf(page, png)).toBeGreaterThan(100);
    }
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save the set as CSV" }).click(),
    ]);
    const { records } = recordsIn(readFileSync((await file.path())!, "utf8"));
    expect(records.map(({ cells }) => cells.slice(0, 2).join(" "))).toContain("Plum hybrid yes");
    expect(records.at(-1)?.cells[0]).toBe("The whole set");
  });
});

/** How many colours the pixels of a picture have: a blank one has a single one. */
function coloursOf(page: Page, png: Buffer): Promise<number> {
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const ink = canvas.getContext("2d");
    ink?.drawImage(picture, 0, 0);
    const data = ink?.getImageData(0, 0, picture.width, picture.height).data ?? new Uint8ClampedArray();
    const colours = new Set<number>();
    for (let i = 0; i < data.length; i += 4)
      colours.add((data[i]! << 16) | (data[i + 1]! << 8) | data[i + 2]!);
    return colours.size;
  }, png.toString("base64"));
}
