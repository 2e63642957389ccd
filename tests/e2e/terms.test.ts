import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { GLOSSARY } from "../../dashboard/words/glossary.ts";
import { test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";
import { expectSound, WIDTHS } from "./setup/sound.ts";

/** Finds on which, together, each word comes up. */
const FINDS = ["canal-shopper", "copper-track-bike", "yellow-folder"];

async function openFind(page: Page, id: string): Promise<Locator> {
  await page.goto(`/finds/${id}`);
  await headed(page, /\.$/);
  await page.getByRole("region", { name: "Verdict", exact: true }).waitFor();
  return page.locator("button.term:visible");
}

describe("the words that a find uses in a sense of its own", () => {
  test("are all explained on one find or another, each where it stands", async ({ page }) => {
    const explained = new Set<string | null>();
    for (const id of FINDS) {
      await openFind(page, id);
      // Work that may come to no end stands in a longer course's plan.
      if (id === "canal-shopper")
        await page.locator(".plans").getByRole("radio", { name: "Restore" }).check();
      for (const box of await page.locator(".termbox").all())
        explained.add(await box.getAttribute("aria-label"));
    }
    expect([...explained].sort()).toEqual(
      Object.values(GLOSSARY)
        .map(({ name }) => name)
        .sort(),
    );
  });

  test("open by keyboard, take the focus to be read, close with Escape and give the focus back", async ({
    page,
  }) => {
    const words = await openFind(page, "copper-track-bike");
    await words.first().focus();
    await page.keyboard.press("Enter");
    const box = page.locator(".termbox:popover-open");
    await box.waitFor();
    await expect.poll(() => box.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await box.textContent()).toContain(await box.getAttribute("aria-label"));
    await page.keyboard.press("Escape");
    await expect.poll(() => box.count()).toBe(0);
    await expect.poll(() => words.first().evaluate((one) => one === document.activeElement)).toBe(true);
  });

  test("are 44 pixels to press on a phone and on a desk, their box stays on the screen, and axe finds nothing", async ({
    page,
  }) => {
    const words = await openFind(page, "copper-track-bike");
    const box = page.locator(".termbox:popover-open");
    expect(await words.count()).toBeGreaterThan(4);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 844 });
      for (const word of await words.all()) {
        expect(await word.evaluate(pressable)).toEqual({ height: 44, width: 44, hit: true });
        await word.click();
        await box.waitFor();
        const place = (await box.boundingBox())!;
        expect(place.x).toBeGreaterThanOrEqual(0);
        expect(place.x + place.width).toBeLessThanOrEqual(width);
        expect(place.y).toBeGreaterThanOrEqual(0);
        expect(place.y + place.height).toBeLessThanOrEqual(844);
        await page.keyboard.press("Escape");
        await expect.poll(() => box.count()).toBe(0);
      }
      await words.first().click();
      await expectSound(page, { place: ".termbox:popover-open", widths: [width] });
      await page.keyboard.press("Escape");
    }
  });
});

/** Runs in the page: how large a place answers to a press, at least 44 pixels each way, and whether its middle does. */
function pressable(word: Element): { width: number; height: number; hit: boolean } {
  word.scrollIntoView({ block: "center" });
  const { left, top, width, height } = word.getClientRects()[0]!;
  const after = getComputedStyle(word, "::after");
  return {
    width: Math.min(44, Math.round(Number.parseFloat(after.width))),
    height: Math.min(44, Math.round(Number.parseFloat(after.height))),
    hit: word.contains(document.elementFromPoint(left + width / 2, top + height / 2)),
  };
}
