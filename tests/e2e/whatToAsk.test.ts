import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { headed, openDescribed } from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const PAGE = "/finds/plum-hybrid/listing";
const SOLD = /^Made safe it sells for about €\d+, likely between €\d+ and €\d+\.$/;

/** Adds a sale of the same model in the form on the page. */
async function addSale(page: Page, price: number, kind: "Paid" | "Asked"): Promise<void> {
  await page.getByLabel("Price", { exact: true }).fill(String(price));
  await page.getByRole("radio", { name: kind, exact: true }).check();
  await page.getByRole("radio", { name: "Ready and tidy" }).check();
  await page.getByRole("button", { name: "Add the sale" }).click();
  await page.getByText("Added.", { exact: true }).waitFor();
}

/** Dark and light pixels in the lane of dots under the bar of a row. */
async function inkUnderBar(page: Page, row: string): Promise<number> {
  return page.evaluate((name) => {
    const li = [...document.querySelectorAll(".values > li")].find((one) =>
      one.textContent?.startsWith(name),
    );
    const canvas = document.querySelector<HTMLCanvasElement>(".values ~ .plotlayer canvas");
    const plot = li?.querySelector(".plot");
    if (canvas === null || plot === null || plot === undefined) return 0;
    const ratio = canvas.height / canvas.getBoundingClientRect().height;
    const { top, bottom } = plot.getBoundingClientRect();
    const above = canvas.getBoundingClientRect().top;
    // From just below the bar (7 px half its thickness, its tick 11) to the end of the lane.
    const from = Math.round(((top + bottom) / 2 - above + 12) * ratio);
    const data =
      canvas.getContext("2d")?.getImageData(0, from, canvas.width, Math.round(8 * ratio)).data ?? [];
    let inked = 0;
    for (let i = 0; i < data.length; i += 4) {
      if ((data[i + 3] ?? 0) > 200 && (data[i] ?? 255) < 60) inked += 1;
    }
    return inked;
  }, row);
}

describe("what to ask", () => {
  test("three sales of one's own move the range and its label, and stand in chart, cards and table", async ({
    page,
  }) => {
    await page.goto("/finds/plum-hybrid");
    await page.getByText(/All of these estimates come from invented demo sales\./).waitFor();
    await page.getByRole("link", { name: "What to ask for it" }).click();
    const before = await headed(page, SOLD);
    await page.getByRole("heading", { name: "No sale of your own yet" }).waitFor();
    await page.getByText("All of this estimate comes from invented demo sales.").waitFor();
    const plain = await inkUnderBar(page, "Made safe");

    await addSale(page, 90, "Paid");
    await page.getByRole("heading", { name: "What your own sales did" }).waitFor();
    await addSale(page, 100, "Paid");
    await addSale(page, 120, "Asked");
    await page
      .getByText(/ come from your 3 sales, the rest from invented demo sales\./)
      .first()
      .waitFor();
    const after = await headed(page, SOLD);
    expect(middle(after)).toBeLessThan(middle(before));

    const cards = page.getByRole("list", { name: "What your own sales did" }).getByRole("listitem");
    expect(await cards.count()).toBe(3);
    const told = (await cards.allInnerTexts()).join("\n");
    expect(told).toMatch(/Counts for (a|two|less).* of the estimate\./);
    expect(told).toMatch(/€120 asked/);
    expect(told).not.toMatch(/NaN|undefined|null/);
    // The dots of the row they speak for, and of no other.
    await expect.poll(() => inkUnderBar(page, "Made safe")).toBeGreaterThan(plain + 20);
    await page.getByText("Show as a table").first().click();
    await page.getByRole("row", { name: /^Your sale 1: Plum hybrid, (paid|asked) €\d+/ }).waitFor();
    const chart = page.getByRole("application", { name: /3|three sales of your own/ }).first();
    await chart.focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await expect
      .poll(() => chart.locator("[aria-live=polite]").textContent())
      .toMatch(/^Made safe\. about €\d+\. 8 in 10 between .*\. three sales of your own: from €\d+ to €\d+/);
    await expectSound(page);

    // The same sales stand with the others, and in the label of the find's own page.
    await page.goto("/prices");
    await headed(page, /^3 sales of your own/);
    await page.goto("/finds/plum-hybrid");
    await page
      .getByText(/of these estimates come from your 3 sales, the rest from invented demo sales\./)
      .waitFor();
  });

  test("a price far from all else is flagged, taken away, and taken back", async ({ page }) => {
    await page.goto(PAGE);
    await headed(page, SOLD);
    await addSale(page, 9000, "Paid");
    await page.getByText("Far from all else: look at the price and description again.").waitFor();
    await page.getByText("arrow head: beyond the axis").waitFor();
    await page.getByRole("button", { name: "Remove Plum hybrid" }).click();
    await page.getByRole("heading", { name: "No sale of your own yet" }).waitFor();
    await page.getByRole("button", { name: "Take it back" }).click();
    await page.getByText("Far from all else", { exact: false }).first().waitFor();
  });

  test("the form names what is missing and keeps its place", async ({ page }) => {
    await page.goto(PAGE);
    await headed(page, SOLD);
    await page.getByRole("button", { name: "Add the sale" }).click();
    expect(await page.getByRole("alert").allInnerTexts()).toEqual(["Fill this in.", "Fill this in."]);
    await expect
      .poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).inputMode))
      .toBe("decimal");
  });

  test("another state changes heading, steps, suggestion and advert together", async ({ page }) => {
    await page.goto(PAGE);
    const title = await headed(page, SOLD);
    await page.getByRole("radio", { name: /^As found/ }).check();
    const found = await headed(page, /^As found it sells for about €\d+, likely between €\d+ and €\d+\.$/);
    expect(middle(found)).toBeLessThan(middle(title));
    await page
      .getByRole("heading", { name: /^A plain bicycle fetches €\d+; this one, as found, €\d+$/ })
      .waitFor();
    const [low, mid] = await page.getByRole("button", { name: /^Ask €/ }).allInnerTexts();
    expect(low).toMatch(/€\d+/);
    await page
      .getByRole("button", { name: /^Ask €/ })
      .nth(1)
      .click();
    const advert = page.getByLabel("Text of the advert, yours to change");
    const figure = /€(\d+)/.exec(mid ?? "")?.[1];
    await expect.poll(() => advert.inputValue()).toContain(figure);
    // The page picks the state: the draft has no picker of its own.
    expect(await page.getByRole("group", { name: "Sold in which state?" }).count()).toBe(1);
  });

  test("a stopped find has a reason and no figure", async ({ page }) => {
    await page.goto("/finds/white-carbon-racer/listing");
    await headed(page, /^Stopped/);
    await page.getByText("While this stands, no figure is worked out", { exact: false }).waitFor();
    expect(await page.locator("main").textContent()).not.toMatch(/€\d/);
    await expectSound(page);
  });

  test("a find of one's own has the page too; an unknown one says so", async ({ page }) => {
    await openDescribed(page, ["Road racing", "1980s", "Steel", "Top"], /^Restore it: /);
    const id = new URL(page.url()).pathname.split("/").at(-1);
    await page.goto(`/finds/${id}/listing`);
    await headed(page, /it sells for about €[\d,]+, likely between/);
    await page.getByText("Invented prices.").waitFor();
    await page.goto("/finds/no-such-find/listing");
    await headed(page, /^There is no find here by that name/);
  });
});

/** The figure behind "about". */
function middle(sentence: string): number {
  return Number(/about €([\d,]+)/.exec(sentence)?.[1]?.replace(",", ""));
}
