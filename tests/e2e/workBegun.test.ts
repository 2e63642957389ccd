import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { describeFind, headed, ledTo, openCheck } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

/** A steel racer of the top tier: worth restoring until its frame turns out bent. */
const RACER = ["Road racing", "1980s", "Steel", "Top"];
const JOB = "Wash, degrease, look again";
const SPENT = "Already spent €30 and 2 h: shown, not counted.";

/** Describes a racer, opens its page and unfolds the job so far. */
async function openWork(page: Page): Promise<Locator> {
  await ledTo(page, "the page of a racer", async () => {
    await describeFind(page, RACER, /^Restore it: /);
    await page.getByRole("link", { name: "See the whole answer" }).click();
    await headed(page, /^Restore /);
    await page.waitForURL("**/finds/own-*");
  });
  const work = page.locator("details.begun");
  await work.locator("summary").click();
  return work;
}

const plan = (page: Page) => page.getByRole("region", { name: /hours and €\d+ to / });
const jobInPlan = (page: Page) => plan(page).locator(".plan > li").filter({ hasText: JOB });

describe("the job so far", () => {
  test("compares the courses from now on: what is done leaves the plan, stays ticked, and is kept", async ({
    page,
  }) => {
    const work = await openWork(page);
    await jobInPlan(page).waitFor();
    const before = await plan(page).getByRole("heading").first().textContent();

    await work.getByLabel("Money spent").fill("30");
    await work.getByLabel("Hours spent").fill("2");
    await work.getByText(SPENT).waitFor();
    const verdict = page.getByRole("region", { name: "Verdict", exact: true });
    await verdict.getByText("Already spent €30 and 2 h").waitFor();
    // Spent is sunk: the plan's hours and money are the same.
    expect(await plan(page).getByRole("heading").first().textContent()).toBe(before);

    const ticked = work.getByRole("checkbox", { name: JOB });
    await ticked.check();
    await expect.poll(() => jobInPlan(page).count()).toBe(0);
    expect(await ticked.isChecked()).toBe(true);
    expect(await plan(page).getByRole("heading").first().textContent()).not.toBe(before);

    await page.reload();
    await work.getByText(SPENT).waitFor();
    expect(await ticked.isChecked()).toBe(true);
    await ticked.uncheck();
    await jobInPlan(page).waitFor();
    await expect.poll(() => plan(page).getByRole("heading").first().textContent()).toBe(before);
  });

  test("takes what is bought off the shopping list, with what it would be worth again", async ({ page }) => {
    const work = await openWork(page);
    const first = work.locator(".thing").first();
    const name = await first.locator(".tick > span").evaluate((words) => words.firstChild?.textContent ?? "");
    const list = page.locator(".shopping");
    await list.locator("summary").click();
    const line = list.getByRole("rowheader", { name, exact: true });
    await line.waitFor();
    await first.getByRole("checkbox").check();
    await expect.poll(() => line.count()).toBe(0);

    const cash = page.getByText(/to lay out/);
    const without = await cash.first().textContent();
    await first.getByLabel(/^Worth again/).fill("6");
    await expect.poll(() => first.getByLabel(/^Worth again/).inputValue()).toBe("6");
    // What is bought already is no longer laid out, whatever it is worth again.
    expect(await cash.first().textContent()).toBe(without);
    await first.getByLabel(/^Worth again/).fill("-1");
    await first.getByRole("alert").waitFor();
    await first.getByLabel(/^Worth again/).fill("0");
    await first.getByRole("checkbox").uncheck();
    await line.waitFor();
  });

  test("takes a discovery through its check, and keeps what was done", async ({ page }) => {
    const work = await openWork(page);
    await work.getByRole("checkbox", { name: JOB }).check();
    await work.getByRole("link", { name: "Answer that check" }).click();
    const dents = await openCheck(page, "Frame dents");
    await dents.getByRole("radio", { name: /^Creased/ }).check();
    await headed(page, /^(?!Restore)/);
    await page.getByRole("link", { name: "See the whole answer" }).click();
    await page.locator("details.begun").waitFor();
    expect(await page.getByRole("checkbox", { name: JOB }).isChecked()).toBe(true);
  });

  test("changes what matters most, and each bar goes with its row", async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/finds/copper-track-bike");
    await page.getByRole("button", { name: "Copy to ask what if" }).click();
    await page.getByRole("link", { name: "See the whole answer" }).click();
    const work = page.locator("details.begun");
    await work.locator("summary").click();
    const rows = page.locator(".moves > li");
    const before = await rows.locator("b").allInnerTexts();
    await work
      .getByRole("checkbox", { name: /^Record serial number/ })
      .first()
      .check();
    await expect.poll(() => rows.locator("b").allInnerTexts()).not.toEqual(before);
    // What is told of a mark stands 4 pixels over the foot of its bar's row.
    const chart = page.locator(".movesbox .plotlayer");
    const overFoot = (row: number) =>
      chart.evaluate((layer, at) => {
        const foot = [...document.querySelectorAll(".moves .plot")].at(at)!.getBoundingClientRect().bottom;
        return Math.round(foot - layer.querySelector(".tip")!.getBoundingClientRect().top);
      }, row);
    await chart.focus();
    await page.keyboard.press("End");
    await expect.poll(() => overFoot(-1)).toBe(4);
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => overFoot(-2)).toBe(4);
  });

  test("is not asked of an invented find", async ({ page }) => {
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("region", { name: /^Not looked at, and likeliest at fault/ }).waitFor();
    expect(await page.locator("details.begun").count()).toBe(0);
  });

  test("has nothing that axe finds and nothing wider than the screen, at 390 and 1280 pixels, light and dark", async ({
    page,
  }) => {
    const work = await openWork(page);
    await work.locator(".thing").first().getByRole("checkbox").check();
    await expectSound(page, { place: "main" });
  });
});
