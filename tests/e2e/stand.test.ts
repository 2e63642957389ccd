import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { describeFind, headed, ledTo, openDescribed, said } from "./setup/dashboard.ts";
import { expectSound, WIDTHS } from "./setup/sound.ts";

/** A steel racer: at this price some looks are worth their minutes. */
const RACER = ["Road racing", "1980s", "Steel", "Upper"];
const PRICE = "100";
const MONEY = /€\s?\d|\d\s?(€|EUR)/;

/** Describes a racer and puts it on the stand. */
async function onTheStand(page: Page): Promise<void> {
  await ledTo(page, "a racer on the stand", async () => {
    await describeFind(page, RACER, /^Restore it: /);
    await page.getByLabel("Asking price, or what you paid").fill(PRICE);
    await page.getByRole("link", { name: "On the stand" }).click();
    await headed(page, /^Not looked at yet/);
  });
  await headed(page, /^Not looked at yet: \d+ checks to make$/);
  await nextCard(page).locator("button.level").first().waitFor();
}

const nextCard = (page: Page) => page.locator(".nexthere");
const row = (page: Page, check: string) => page.locator(`#check-${check}`);

/** The row of a check, unfolded with its group. */
async function openRow(page: Page, check: string, name: string): Promise<Locator> {
  await page.getByLabel("Find a check").fill(name);
  const card = row(page, check);
  await card.locator("summary").first().click();
  await card.locator(".checkbody").waitFor();
  return card;
}

const box = (card: Locator, name: RegExp) => card.getByRole("textbox", { name });

describe("the next look", () => {
  test("is one card: a press answers it, the next comes, undo brings it back, and the wheel and groups follow", async ({
    page,
  }) => {
    await onTheStand(page);
    const title = nextCard(page).getByRole("heading", { level: 2 });
    const first = await title.textContent();
    await nextCard(page).getByText("takes", { exact: true }).waitFor();
    await nextCard(page).getByText("worth, less your time").waitFor();
    await nextCard(page).locator("button.level").first().click();
    await headed(page, /^No fault found in the 1 check made; \d+ not made$/);
    await expect.poll(() => title.textContent()).not.toBe(first);
    // The heading of the new card has the focus, so that the keys go on there.
    await expect.poll(() => title.evaluate((heading) => document.activeElement === heading)).toBe(true);
    await page.getByRole("img", { name: /^Looked at: \d+ of 12 groups/ }).waitFor();
    await page.getByText("1 of ", { exact: false }).first().waitFor();

    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => title.textContent()).toBe(first);
    await headed(page, /^Not looked at yet/);
  });

  test("is passed by where it cannot be told, and stays unknown", async ({ page }) => {
    await onTheStand(page);
    const title = nextCard(page).getByRole("heading", { level: 2 });
    const first = (await title.textContent()) ?? "";
    await nextCard(page).getByRole("button", { name: "Can\u2019t tell" }).click();
    await expect.poll(() => title.textContent()).not.toBe(first);
    await headed(page, /^Not looked at yet/);
    await page.reload();
    await nextCard(page).locator("button.level").first().waitFor();
    expect(await title.textContent()).not.toBe(first);
    await page.getByLabel("Find a check").fill(first);
    await page.locator("details.check").getByText("can\u2019t tell").first().waitFor();
  });

  test("takes keys: a digit answers, 0 cannot tell, U undoes, the slash finds; and they can be turned off", async ({
    page,
  }) => {
    await onTheStand(page);
    const title = nextCard(page).getByRole("heading", { level: 2 });
    const first = await title.textContent();
    await page.keyboard.press("1");
    await headed(page, /^No fault found in the 1 check made/);
    await expect.poll(() => title.textContent()).not.toBe(first);
    await page.keyboard.press("u");
    await headed(page, /^Not looked at yet/);
    await expect.poll(() => title.textContent()).toBe(first);
    await page.keyboard.press("0");
    await expect.poll(() => title.textContent()).not.toBe(first);
    await page.keyboard.press("/");
    await page.keyboard.type("chain");
    expect(await page.getByLabel("Find a check").inputValue()).toBe("chain");

    await page.getByText("Keys", { exact: true }).click();
    await page.getByRole("checkbox", { name: /^Keys answer/ }).uncheck();
    const shown = await title.textContent();
    await page.getByRole("heading", { level: 1 }).click();
    await page.keyboard.press("1");
    await page.waitForTimeout(300);
    expect(await title.textContent()).toBe(shown);
    await headed(page, /^Not looked at yet/);
  });
});

describe("looking on", () => {
  test("ends where no look is worth its minute; what is owed is told, and can be gone on with", async ({
    page,
  }) => {
    await openDescribed(page, RACER, /^Restore it: /);
    await page.getByRole("link", { name: "On the stand" }).click();
    await nextCard(page).getByText("Enough looked at. No other look is worth its minute.").waitFor();
    await nextCard(page)
      .getByText(/looks are still owed before it is ridden/)
      .waitFor();
    await page.getByRole("heading", { name: "Still open, none worth its minute" }).waitFor();
    await nextCard(page).getByRole("button", { name: "Go on with what is owed" }).click();
    await nextCard(page).locator("button.level").first().waitFor();
    await nextCard(page).getByText("before anyone rides it").waitFor();
  });
});

/** The length of the chain as the browser keeps it. */
function keptLength(page: Page): Promise<unknown> {
  return page.evaluate(() => {
    const { finds } = JSON.parse(localStorage.getItem("spokeworth.finds") ?? "{}");
    return finds?.[0]?.answers.observations.chain?.measured?.length24;
  });
}

describe("measuring", () => {
  test("the string test bends as it is typed, says the offset at the axle, and asks to measure again on the line", async ({
    page,
  }) => {
    await onTheStand(page);
    const card = await openRow(page, "rear-alignment", "string test");
    await box(card, /left/).fill("38");
    await box(card, /right/).fill("43");
    // e = (43 - 38) / (2 x 0.58) = 4.31 mm.
    await card.getByRole("img", { name: "The rear end sits 4.3 mm to the right at the axle" }).waitFor();
    await card.getByText("Bend drawn 18 times too large.").waitFor();
    await card.getByText("On the line: measure again.").waitFor();
    await card.getByText(/Between slight and out the line is at 4 mm; your reading comes to 5 mm/).waitFor();
    await card.getByRole("button", { name: /^More: String to seat tube, right/ }).click();
    expect(await box(card, /right/).inputValue()).toBe("43.5");
    await card.getByRole("button", { name: /^Less: String to seat tube, left/ }).click();
    expect(await box(card, /left/).inputValue()).toBe("37.5");
    await card.getByRole("img", { name: /^The rear end sits 5.2 mm to the right/ }).waitFor();
    await expect.poll(() => card.getByText("On the line: measure again.").count()).toBe(0);

    await card.getByRole("button", { name: "Done" }).click();
    await card.getByText("Out: 37.5 and 43.5 mm").waitFor();
    expect(await card.locator(".checkbody").count()).toBe(0);
    await card.locator("summary").first().click();
    expect(await box(card, /left/).inputValue()).toBe("37.5");
  });

  test("the chain's last pin moves against 304.8 mm, with the limit for its sprockets", async ({ page }) => {
    await onTheStand(page);
    const card = await openRow(page, "chain", "chain elongation");
    await card.getByRole("button", { name: /^More: Length of 24 pitches/ }).click();
    expect(await box(card, /^Length/).inputValue()).toBe("304.8");
    const pin = card.locator(".pin circle");
    const before = Number(await pin.getAttribute("cx"));
    await box(card, /^Length/).fill("308");
    await card.getByRole("img", { name: /1\.05 % longer than new$/ }).waitFor();
    expect(Number(await pin.getAttribute("cx"))).toBeGreaterThan(before);
    await card.getByText(/needed from 0\.75 % \(307\.1 mm\) where nobody counted the sprockets/).waitFor();
    await card
      .getByText(/^(Gone|On the line)/)
      .first()
      .waitFor();
  });

  test("an impossible measurement is refused beside its field, and kept", async ({ page }) => {
    await onTheStand(page);
    const card = await openRow(page, "chain", "chain elongation");
    await box(card, /^Length/).fill("280");
    const reason = card.getByRole("alert");
    await reason.waitFor();
    expect(await reason.textContent()).toMatch(/^Length of 24 pitches: at least 301\.8 mm, .* not 280\./);
    expect(await box(card, /^Length/).inputValue()).toBe("280");
    await box(card, /^Length/).fill("305");
    await expect.poll(() => reason.count()).toBe(0);
  });

  test("lengths can be typed and read in inches, fractions too; the choice is kept", async ({ page }) => {
    await onTheStand(page);
    await page.getByRole("radio", { name: "Inches" }).check();
    const card = await openRow(page, "chain", "chain elongation");
    await box(card, /^Length/).fill("12 1/16");
    // What is kept and asked is always millimetres.
    await expect.poll(() => keptLength(page)).toBe(306.3875);
    await card.getByRole("img", { name: "12.063 in over 24 pitches: 0.52 % longer than new" }).waitFor();
    await page.reload();
    expect(await page.getByRole("radio", { name: "Inches" }).isChecked()).toBe(true);
    await page.getByRole("radio", { name: "Millimetres" }).check();
    const again = await openRow(page, "chain", "chain elongation");
    expect(await box(again, /^Length/).inputValue()).toBe("306.39");
  });

  test("a tyre's marking is split into width and bead seat, with what looks alike and does not fit", async ({
    page,
  }) => {
    await onTheStand(page);
    const card = await openRow(page, "tyre-size", "bead seat");
    const marking = box(card, /^Marking/);
    await marking.fill("28-622");
    await card.getByText("28 mm", { exact: true }).waitFor();
    await card.getByText("622 mm", { exact: true }).waitFor();
    await card.getByText("Looks alike, does not fit 622 mm").waitFor();
    await marking.fill("26 x 1.75");
    await card.getByText("1.75 in (44 mm)").waitFor();
    await card.getByText(/26 x 1 3\/4/).waitFor();
    await marking.fill("26 in");
    await card.getByText(/599, 597, .* or 559 mm/).waitFor();
    await marking.fill("banana");
    await card.getByRole("alert").waitFor();
    expect(await marking.inputValue()).toBe("banana");
    await marking.fill("700x28C");
    await card.getByText("622 mm", { exact: true }).waitFor();
    await card.getByRole("button", { name: "Done" }).click();
    await card.getByText("Current", { exact: true }).waitFor();
  });

  test("front and rear can be told apart, and the worse is shown", async ({ page }) => {
    await onTheStand(page);
    const card = await openRow(page, "rim-lateral", "lateral runout");
    await card.getByLabel("Front and rear apart").check();
    const [front, rear] = [card.locator(".wheelside").first(), card.locator(".wheelside").last()];
    await front.getByRole("button", { name: /^True/ }).click();
    await box(rear, /swing/i).fill("6");
    await rear.getByText("Rear: bad (6 mm).").waitFor();
    await card.getByRole("button", { name: "Done" }).click();
    await card.getByText(/front true, rear 6 mm/).waitFor();
    await card.getByText("not to be ridden").waitFor();
  });
});

describe("the work and the road", () => {
  test("a job is ticked, stays ticked, and its torque and proof unfold; the course can be decided again", async ({
    page,
  }) => {
    await onTheStand(page);
    const work = page.locator("#work");
    const job = work.locator(".job").filter({ hasText: "New tyres, tubes and rim tapes" });
    await job.getByRole("button", { name: /^How/ }).click();
    await job.getByText("Proof", { exact: true }).waitFor();
    const before = await work.getByRole("heading", { level: 2 }).textContent();
    await job.getByRole("checkbox").check();
    await expect.poll(() => work.getByRole("heading", { level: 2 }).textContent()).not.toBe(before);
    expect(await job.getByRole("checkbox").isChecked()).toBe(true);
    await job.getByText("done", { exact: true }).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => job.getByRole("checkbox").isChecked()).toBe(false);
  });

  test("where a job frees or opens something the course can be decided again: at the check it may turn", async ({
    page,
  }) => {
    await page.goto("/finds/orange-racer/stand");
    const work = page.locator("#work");
    await work.getByText("Decide again here.").first().waitFor();
    const answer = work.getByRole("button", { name: /^Answer: / }).first();
    const name = ((await answer.textContent()) ?? "").replace("Answer: ", "");
    await answer.click();
    const card = page.locator("details.check[open]").filter({ hasText: name });
    await card.locator(".checkbody").waitFor();
    // Once its group has unfolded it is sought again: the focus may come after the card.
    const line = card.locator("summary").first();
    await expect.poll(() => line.evaluate((one) => document.activeElement === one)).toBe(true);
  });

  test("blocks and looks owed stand apart before riding, each leads to its card, and its caution stands there", async ({
    page,
  }) => {
    await onTheStand(page);
    const ready = page.locator("#ready");
    await ready.getByText("Before anyone rides it").waitFor();
    const card = await openRow(page, "inner-cable", "inner cable");
    await card.getByRole("button", { name: /^Frayed/ }).click();
    const block = ready.locator(".blocks li").filter({ hasText: "Brake inner cable" });
    await page.locator("#work").getByRole("radio", { name: "Sell as found" }).check();
    await block.getByText(/^The plan in sight leaves it\. To make it safe: new brake inners/).waitFor();
    await page.locator("#work").getByRole("radio", { name: "Make safe" }).check();
    await block.getByText(/^To do: new brake inners/).waitFor();
    await block.getByRole("button").click();
    await card.getByText("Brakes faulty or taken apart.").waitFor();
    const owed = ready.locator(".owed li").first();
    await owed.getByText(/^Look: \d+ min/).waitFor();
  });

  test("a stop leaves no figure", async ({ page }) => {
    await onTheStand(page);
    const card = await openRow(page, "serial", "serial number");
    await card.getByRole("button", { name: /^Removed/ }).click();
    await headed(page, /^Stopped\. Serial number: /);
    await page.getByText("While this stands, no figure is worked out.").waitFor();
    expect(await said(page)).not.toMatch(MONEY);
    expect(await page.locator("#work").count()).toBe(0);
  });
});

describe("an invented find", () => {
  test("is shown, and what is answered goes into a copy that takes its place", async ({ page }) => {
    await page.goto("/finds/orange-racer");
    await page.getByRole("link", { name: "On the stand" }).click();
    await nextCard(page).locator("button.level").first().waitFor();
    await page.getByText("What you answer here goes into a copy of your own").waitFor();
    const made = Number(/(\d+) checks made/.exec(await headed(page, /checks made/))?.[1]);
    await nextCard(page).locator("button.level").first().click();
    await headed(page, new RegExp(`${made + 1} checks made`));
    await page.getByText("copy of an invented find").waitFor();
    expect(new URL(page.url()).pathname).toMatch(/^\/finds\/own-.*\/stand$/);
    await page.goto("/finds/orange-racer/stand");
    await headed(page, new RegExp(`${made} checks made`));
  });

  test("whose readiness is listed leads from its page to the check's card", async ({ page }) => {
    await page.goto("/finds/plum-hybrid");
    await page.getByRole("link", { name: "Brake inner cable" }).click();
    await row(page, "inner-cable").locator(".checkbody").waitFor();
    expect(new URL(page.url()).hash).toBe("#check-inner-cable");
  });
});

/** What reaches beyond the right edge of the screen while the page scrolls sideways; empty where it does not. */
function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    return [...document.querySelectorAll("body *")]
      .filter((one) => one.getBoundingClientRect().right > clientWidth)
      .map((one) => `${one.tagName} ${one.className} ${one.textContent?.slice(0, 40)}`);
  });
}

describe("how it looks", () => {
  test("has nothing that axe finds and nothing wider than the screen, 60 px buttons with gloves on, and fits a phone with text at 200 %", async ({
    page,
  }) => {
    // The string test unfolded and on the line, with gloves on.
    await onTheStand(page);
    await page.getByRole("checkbox", { name: /^Gloves on/ }).check();
    const card = await openRow(page, "rear-alignment", "string test");
    await box(card, /left/).fill("38");
    await box(card, /right/).fill("43");
    await card.getByText("On the line: measure again.").waitFor();
    const level = nextCard(page).locator("button.level").first();
    expect((await level.boundingBox())?.height).toBeGreaterThanOrEqual(60);
    for (const width of WIDTHS) {
      await expectSound(page, { place: "main", widths: [width] });
      expect(await tooWide(page), `${width}`).toEqual([]);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    await box(card, /left/).fill("900");
    await card.getByText(/: a value from 0 to 150 mm, not 900\. Nothing else can be on a bicycle/).waitFor();
    // What no bicycle has is not drawn: how it is measured stands there.
    await expect.poll(() => card.locator("svg.live").count()).toBe(0);
    await expectSound(page, { place: "#check-rear-alignment", state: "refused" });
    await page.setViewportSize({ width: 390, height: 844 });
    await box(card, /left/).fill("38");
    await page.addStyleTag({ content: "html { font-size: 200% }" });
    expect(await tooWide(page), "text at 200 %").toEqual([]);
  });
});
