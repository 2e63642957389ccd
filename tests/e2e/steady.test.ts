import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { DEMO_FINDS } from "../../dashboard/finds/demo.ts";
import { fragmentOf } from "../../dashboard/share/fragment.ts";
import { sharedFind } from "../../dashboard/share/sharedFind.ts";
import { testOfFirstLoad as test, testOfFirstVisit } from "./setup/browserTest.ts";
import { describeFind, headed, openCheck } from "./setup/dashboard.ts";

/** A part of a page that moved by itself, and when (Layout Instability): nothing that the user just did counts. */
interface Shift {
  readonly value: number;
  readonly moved: readonly string[];
}

/** The address of a find that somebody sent. */
const SHARED = `/shared#${await fragmentOf(sharedFind(DEMO_FINDS[0]!, undefined))}`;

/** Path, heading, and the widths at which it is seen. */
const PAGES = [
  ["/", /earns? more than your/, 390, 1280],
  ["/finds/plum-hybrid", /^Make the plum hybrid safe/, 390, 1280],
  ["/finds/white-carbon-racer", /^Stopped\./, 390],
  ["/finds/plum-hybrid/listing", /^Made safe it sells/, 390],
  ["/describe", /four picks/, 390],
  ["/compare", /^The plum hybrid is the surest/, 390, 1280],
  ["/together", /fit/, 390, 1280],
  ["/prices", /\S/, 390],
  ["/spot", /^What kind is it\?/, 390],
  ["/finds/plum-hybrid/stand", /checks made/, 390, 1280],
  ["/selling", /\S/, 390],
  ["/selling/plum-hybrid", /^Ask /, 390, 1280],
  ["/sheets", /\S/, 390],
  // Apart: from one width to the other the same address with its fragment would not be loaded anew.
  [SHARED, /^Make Plum hybrid safe/, 390],
  [SHARED, /^Make Plum hybrid safe/, 1280],
] as const;

/** Keeps an account of what moves on every page that is opened from now on. */
async function watch(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const shifts: Shift[] = [];
    Object.assign(globalThis, { shifts });
    new PerformanceObserver((list) => {
      type Entry = PerformanceEntry & {
        value: number;
        hadRecentInput: boolean;
        sources: { node: Node | null }[];
      };
      for (const { value, hadRecentInput, sources } of list.getEntries() as Entry[]) {
        if (hadRecentInput) continue;
        const moved = sources.map(({ node }) => `${node?.nodeName} ${node?.textContent?.slice(0, 40)}`);
        shifts.push({ value, moved });
      }
    }).observe({ type: "layout-shift", buffered: true });
  });
}

/** What moved, once all that comes late has come: charts, panels, the engine, the pages kept. */
async function moved(page: Page): Promise<Shift[]> {
  await page.waitForLoadState("networkidle");
  await page.waitForTimeout(500);
  return page.evaluate(() => (globalThis as unknown as { shifts: Shift[] }).shifts);
}

describe("nothing on a page moves by itself", { timeout: 60_000 }, () => {
  for (const [path, heading, ...widths] of PAGES) {
    // The engine's coming is the same on every page: one is seen with it.
    const seen = path === "/" ? testOfFirstVisit : test;
    seen(`while ${path.replace(/#.*/, "")} loads at ${widths.join(" and ")} pixels`, async ({ page }) => {
      await watch(page);
      for (const width of widths) {
        await page.setViewportSize({ width, height: 844 });
        await page.goto(path);
        await headed(page, heading);
        expect(await moved(page), `${width} pixels`).toEqual([]);
      }
    });
  }

  test("is no empty claim: what is pushed down is told", async ({ page }) => {
    await watch(page);
    await page.goto("/prices");
    await moved(page);
    await page.evaluate(() => {
      const pushed = Object.assign(document.createElement("p"), { textContent: "Late" });
      pushed.style.height = "200px";
      document.querySelector("main")!.prepend(pushed);
    });
    expect((await moved(page)).length).toBeGreaterThan(0);
  });

  test("when an answer changes under the form", async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    // The letters are at hand then: where they come too late for a page it keeps the browser's own, which are wider.
    await page.goto("/describe", { waitUntil: "networkidle" });
    await watch(page);
    await describeFind(page, ["Road racing", "1980s", "Steel", "Top"], /^Restore it: /);
    const check = await openCheck(page, "Signs of a front-end collision");
    await moved(page);
    await page.evaluate(() => (globalThis as unknown as { shifts: Shift[] }).shifts.splice(0));
    await check.getByRole("radio", { name: /^Plain signs/ }).check();
    await headed(page, /^Break it for parts: /);
    expect(await moved(page)).toEqual([]);
  });
});
