import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";

const COURSES = ["Restore", "Make safe", "Sell as found", "Break for parts", "Leave"];

async function openFinds(page: Page): Promise<void> {
  await page.goto("/");
  await page.locator(".row").nth(6).waitFor();
}

async function pick(page: Page, label: string): Promise<void> {
  await page.getByRole("radio", { name: label, exact: true }).first().check({ force: true });
}

/** Describes an upper-tier steel racer of the 1980s that was looked at where it matters. */
async function describeRacer(page: Page): Promise<void> {
  await page.goto("/describe");
  await page.locator(".pick").first().waitFor();
  for (const label of ["Road racing", "1980s", "Steel", "Upper"]) await pick(page, label);
  await verdict(page);
}

const VERDICT = /Restore it|Make it safe|Sell it as found|Break it for parts|Leave it|Look first|Stopped/;

/** The verdict at the foot, once it has come. */
async function verdict(page: Page): Promise<string> {
  const foot = page.locator(".foot");
  await foot.getByText(VERDICT).first().waitFor();
  return (await foot.textContent()) ?? "";
}

async function answer(page: Page, check: string, rank: number): Promise<void> {
  const card = page.locator(".check", { hasText: check }).first();
  const radios = card.getByRole("radio");
  if ((await radios.count()) === 0) await card.locator("summary").click();
  await radios.nth(rank).check({ force: true });
}

describe("the first page", () => {
  test("charts seven invented finds over all five outcomes, and stops an eighth", async ({ page }) => {
    await openFinds(page);
    const rows = await page.locator(".row").allTextContents();
    expect(rows).toHaveLength(7);
    for (const row of rows) expect(row).toContain("invented");
    for (const course of COURSES)
      expect(
        rows.some((row) => row.includes(course)),
        course,
      ).toBe(true);
    expect(await page.getByText("your goal").first().textContent()).toMatch(/€\d+/);
    expect(await page.locator("main").textContent()).toMatch(/racer: stopped/i);
  });

  test("opens a find with its decision, value, plan, readiness and cautions, and comes back", async ({
    page,
  }) => {
    await openFinds(page);
    await page.getByRole("link", { name: "Copper track bike" }).click();
    await page.getByRole("heading", { level: 1, name: /copper track bike/i }).waitFor();
    const text = await page.locator("main").textContent();
    for (const part of [
      /an hour/,
      /Pay at most/,
      /Made safe it brings|As found/,
      /hours and €/,
      /caution/i,
      /checks made/,
    ])
      expect(text).toMatch(part);
    await page.goBack();
    await page.locator(".row").first().waitFor();
  });

  test("has ink in its chart, at a phone's width and a desk's, and never scrolls sideways", async ({
    page,
  }) => {
    for (const width of [390, 1280]) {
      await page.setViewportSize({ width, height: 900 });
      await openFinds(page);
      await expect
        .poll(() => page.locator("canvas").first().evaluate(inkOf), { timeout: 5000 })
        .toBeGreaterThan(500);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
    }
  });

  test("takes another goal, says what it changes, and keeps it", async ({ page }) => {
    await openFinds(page);
    await page.getByRole("button", { name: /goal/ }).click();
    await page.getByLabel("What one more hour must earn", { exact: true }).fill("25");
    const title = page.getByRole("heading", { level: 1 });
    await title.getByText("€25").waitFor();
    await page.reload();
    await page.locator(".row").nth(6).waitFor();
    expect(await title.textContent()).toContain("€25");
  });
});

describe("one's own find", () => {
  test("changes its decision with an answer, and changes it back", async ({ page }) => {
    await describeRacer(page);
    await answer(page, "Signs of a front-end collision", 0);
    await answer(page, "Frame cracks", 0);
    await expect.poll(() => verdict(page)).not.toMatch(/Break it for parts/);
    const before = await verdict(page);
    await answer(page, "Signs of a front-end collision", 2);
    await expect.poll(() => verdict(page)).toMatch(/Break it for parts|Leave it/);
    await expect.poll(async () => (await verdict(page)) !== before).toBe(true);
    await answer(page, "Signs of a front-end collision", 0);
    await expect.poll(() => verdict(page)).not.toMatch(/Break it for parts/);
  });

  test("is stopped by a removed serial number: no figure is shown", async ({ page }) => {
    await describeRacer(page);
    await answer(page, "Serial number", 3);
    await page
      .locator(".foot")
      .getByText(/Stopped/)
      .waitFor();
    expect(await page.locator(".foot").textContent()).not.toMatch(/€\s?\d/);
  });

  test("keeps a refused measurement and says why beside the field", async ({ page }) => {
    await describeRacer(page);
    await page.locator(".group summary", { hasText: "Transmission" }).click();
    const chain = page.locator(".check", { hasText: "Chain elongation" });
    await chain.locator("summary").click();
    const field = chain.getByLabel(/Length of 24/);
    await field.fill("280");
    await chain.locator(".wrong").first().waitFor();
    expect(await field.inputValue()).toBe("280");
    await field.fill("306.3");
    await expect.poll(() => chain.locator(".wrong:visible").count()).toBe(0);
    await expect.poll(() => chain.locator("summary").textContent()).toMatch(/306\.3 mm/);
  });

  test("joins the chart and is still there after a reload", async ({ page }) => {
    await describeRacer(page);
    await page.getByLabel("Name on the chart (optional)").fill("Hill racer");
    await page.getByRole("link", { name: "Finds", exact: true }).first().click();
    await page.getByRole("link", { name: "Hill racer" }).waitFor();
    await page.reload();
    await page.getByRole("link", { name: "Hill racer" }).click();
    await page.getByRole("heading", { level: 1, name: /Hill racer/ }).waitFor();
  });
});

describe("trouble", () => {
  test("without the API the page says so, and tries again", async ({ page }) => {
    await openFinds(page);
    await page.route("**/v1/appraisals", (route) => route.abort());
    await page.getByRole("button", { name: /goal/ }).click();
    await page.getByLabel("What one more hour must earn", { exact: true }).fill("15");
    await page.locator(".trouble").first().waitFor();
    await page.unroute("**/v1/appraisals");
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Try again" }).first().click();
    await page.getByRole("heading", { level: 1 }).getByText("€15").waitFor();
  });
});

describe("everyone can use it", () => {
  for (const colorScheme of ["light", "dark"] as const) {
    test(`axe finds nothing on the pages in the ${colorScheme}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      for (const width of [390, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        await openFinds(page);
        await expectNoFaults(page, `finds ${width}`);
        await page.getByRole("link", { name: "Copper track bike" }).click();
        await page.getByRole("heading", { level: 1, name: /copper track bike/i }).waitFor();
        await expectNoFaults(page, `a find ${width}`);
        await describeRacer(page);
        await expectNoFaults(page, `describe ${width}`);
      }
    });
  }
});

async function expectNoFaults(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`),
    where,
  ).toEqual([]);
}

/** Pixels of a canvas that are not empty. */
function inkOf(canvas: Element): number {
  const { width, height } = canvas as HTMLCanvasElement;
  const data = (canvas as HTMLCanvasElement).getContext("2d")!.getImageData(0, 0, width, height).data;
  let ink = 0;
  for (let i = 3; i < data.length; i += 4) if (data[i]! > 0) ink++;
  return ink;
}
