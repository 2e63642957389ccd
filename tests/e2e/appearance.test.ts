import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed, openCheck, openDescribed, openFinds, setGoal } from "./setup/dashboard.ts";
import { expectSound, WIDTHS } from "./setup/sound.ts";

const RACER = ["Road racing", "1980s", "Steel", "Top"];

describe("the chart", () => {
  test.for(["no-preference", "reduce"] as const)(
    "draws every bar, on a phone and on a desk, before and after another goal, with motion: %s",
    async (reducedMotion, { page }) => {
      await page.emulateMedia({ reducedMotion });
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 844 });
        await openFinds(page);
        await expectBars(page, 7);
        await setGoal(page, width === 390 ? 21 : 14);
        await headed(page, width === 390 ? /€21/ : /€14/);
        await expectBars(page, 7);
        await page.getByRole("link", { name: "Copper track bike" }).click();
        await headed(page, /copper track bike/);
        await page.getByRole("region", { name: /matters? most|moves it much/ }).waitFor();
        // One bar in the verdict, five rows of dots, four prices, and a bar for each thing that moves it.
        await expectBars(page, 10, await page.locator(".moves > li").count());
      }
    },
  );

  test("is one tab stop; arrows move between its marks and speak them, Enter opens the find", async ({
    page,
  }) => {
    const rows = await openFinds(page);
    const chart = page.getByRole("application", { name: /^Margin per hour by find/ });
    await rows.last().getByRole("link").focus();
    await page.keyboard.press("Tab");
    expect(await chart.evaluate((layer) => layer === document.activeElement)).toBe(true);
    const spoken = chart.locator("[aria-live=polite]");
    const names = await rows.getByRole("link").allInnerTexts();
    for (const name of names) {
      await page.keyboard.press("ArrowDown");
      await expect.poll(() => spoken.textContent()).toMatch(new RegExp(`^${name}\\. .*an hour, .*misses €`));
    }
    await page.keyboard.press("Home");
    await expect.poll(() => spoken.textContent()).toMatch(new RegExp(`^${names[0]}\\.`));
    await page.keyboard.press("Tab");
    expect(await chart.evaluate((layer) => layer.contains(document.activeElement))).toBe(false);
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("End");
    await page.keyboard.press("Enter");
    await headed(page, /canal shopper/);
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
  });
});

describe("every page, at 390 and 1280 pixels, light and dark", () => {
  test("the finds: nothing that axe finds, nothing wider than the screen", async ({ page }) => {
    await openFinds(page);
    await expectSound(page);
  });

  test("a find", async ({ page }) => {
    await openFinds(page);
    await page.getByRole("link", { name: "Copper track bike" }).click();
    await headed(page, /^Restore/);
    await expectSound(page);
  });

  test("a stopped find", async ({ page }) => {
    await page.goto("/finds/white-carbon-racer");
    await headed(page, /^Stopped/);
    await expectSound(page);
  });

  test("the form, with an answer and a check open", async ({ page }) => {
    await openDescribed(page, RACER, /^Restore it: /);
    const check = await openCheck(page, "Headset play and roughness");
    await check.getByRole("radio", { name: /^Loose/ }).check();
    await check.locator("summary").getByText("Loose").waitFor();
    await expectSound(page);
  });
});

/** Every row that a canvas stands for gets its marks: more colours than ground, grid and goal line give it. */
async function expectBars(page: Page, rows: number, more = 0): Promise<void> {
  await expect
    // Every pixel is looked at: not so often that it keeps the page from drawing them.
    .poll(() => page.evaluate(coloursOfRows), { timeout: 10_000, interval: 250 })
    .toSatisfy(
      (colours: number[]) => colours.length === rows + more && colours.every((count) => count > PLAIN),
      `${rows + more} rows, each with more than ${PLAIN} colours`,
    );
}

/** Colours that a strip without a mark may have, from losing ground, grid and softened edges: 7 to 19, as counted. */
const PLAIN = 40;

/** Runs in the page: how many colours the canvas has in the strip of each row. */
function coloursOfRows(): number[] {
  return [...document.querySelectorAll("canvas")].flatMap((canvas) => {
    const layer = canvas.closest(".plotlayer") as HTMLElement;
    const box = layer.parentElement as HTMLElement;
    const top = canvas.getBoundingClientRect().top;
    const scale = canvas.height / canvas.getBoundingClientRect().height;
    const ink = canvas.getContext("2d") as CanvasRenderingContext2D;
    return [...box.querySelectorAll(".plot")].map((plot) => {
      const strip = plot.getBoundingClientRect();
      const from = Math.round((strip.top - top) * scale);
      const { data } = ink.getImageData(0, from, canvas.width, Math.round(strip.height * scale));
      return new Set(new Uint32Array(data.buffer)).size;
    });
  });
}
