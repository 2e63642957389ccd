import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { ledTo } from "./setup/dashboard.ts";
import { expectSound, WIDTHS } from "./setup/sound.ts";

const RACER = ["Road racing", "1980s", "Steel", "Upper"];

/** No claim about speed: as long as the page itself is waited for. */
const PATIENT = { timeout: 10_000 };

const button = (page: Page, name: string | RegExp): Locator => page.getByRole("button", { name });
const bar = (page: Page): Locator => page.getByRole("region", { name: "Verdict so far" });
const most = (page: Page): Locator => bar(page).locator(".o .num");
const card = (page: Page): Locator => page.locator(".ask");
const heading = (page: Page): Locator => card(page).getByRole("heading", { level: 2 });
const was = (page: Page): Locator => page.locator(".was p");

/** On a phone, four picks and a price. */
async function start(page: Page, picks: readonly string[] = RACER, price = "70"): Promise<void> {
  await page.setViewportSize({ width: 390, height: 844 });
  await ledTo(page, `on the spot: ${[...picks, price]}`, async () => {
    await page.goto("/spot");
    for (const pick of picks) await button(page, pick).click();
    await page.getByLabel("Asking price").fill(price);
    await button(page, "Go on").click();
    await heading(page).waitFor();
  });
  await heading(page).waitFor();
  // The first card stands on the picks alone; the price may bring another.
  await settled(page);
}

/** Waits until the answer to the last press has come. */
async function settled(page: Page): Promise<void> {
  await page.locator(".foot:not(.dim)").waitFor();
}

/** Opens a look out of turn, from the list of what is still open. */
async function reach(page: Page, name: string): Promise<void> {
  if ((await heading(page).textContent()) === name) return;
  const list = page.getByRole("region", { name: /^Still open/ });
  await list.locator("summary").evaluateAll((all) => {
    for (const one of all) (one.parentElement as HTMLDetailsElement).open = true;
  });
  // Front and rear are one entry.
  const entry = name.replace(/: (front|rear)$/, "");
  await list.getByRole("button", { name: `Look now ${entry}` }).click();
  await expect.poll(() => heading(page).textContent(), PATIENT).toBe(name);
}

/** Presses a level and waits for the next card. */
async function press(page: Page, level: string | RegExp): Promise<void> {
  const before = await heading(page).textContent();
  await card(page).getByRole("button", { name: level }).first().click();
  await was(page)
    .getByText(/Offer (up|down|stays|now)/)
    .waitFor();
  await settled(page);
  if (await button(page, "Go on looking").isVisible()) await button(page, "Go on looking").click();
  await page.waitForFunction((text) => document.querySelector(".ask h2")?.textContent !== text, before);
}

/** Nothing that axe finds in either theme, nothing wider than the screen, no target too small. */
async function expectSoundHere(
  page: Page,
  state: string,
  widths: readonly number[] = [page.viewportSize()!.width],
): Promise<void> {
  await expectSound(page, { state, widths });
  const small = await page.locator("main button, main .tick, main summary, main a").evaluateAll((all) =>
    all
      .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44)
      .filter((one) => one.closest("p.small, p.demo") === null)
      .map((one) => one.outerHTML),
  );
  expect(small, `${state}: targets under 44 px`).toEqual([]);
}

describe("on the spot", () => {
  test("goes from nothing to an offer: four picks, a price, looks, and the offer moves with each", async ({
    page,
  }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/");
    await page
      .getByRole("navigation", { name: "Main, below" })
      .getByRole("link", { name: "On the spot" })
      .click();
    await page.getByRole("heading", { level: 1, name: "What kind is it?" }).waitFor();
    await button(page, "Road racing").click();
    await page.waitForURL("**/spot/own-*");
    for (const pick of RACER.slice(1)) await button(page, pick).click();
    await page.getByLabel("Asking price").fill("70");
    await button(page, "Go on").click();
    await heading(page).waitFor();
    await page.getByRole("heading", { level: 1, name: "Road racing, 1980s" }).waitFor();
    await bar(page).getByText("Look on before you offer", { exact: true }).waitFor();
    await bar(page)
      .getByText(/^At the €70 asked: €\d+ an hour, likely between/)
      .waitFor();
    const first = await most(page).textContent();
    expect(first).toMatch(/^€\d+$/);

    await reach(page, "Twist the seatpost");
    await press(page, /^Free/);
    await was(page)
      .getByText(/^Seatpost: free\./)
      .waitFor();
    const told = await was(page).textContent();
    const [, from, to] = told?.match(/Offer up from (€\d+) to (€\d+)\./) ?? [];
    expect([from, to]).toEqual([first, await most(page).textContent()]);
    await bar(page).getByText(`was ${from}`).waitFor();

    await button(page, "Decide on what you saw").click();
    await page.getByRole("heading", { name: /^(Decide on what you saw|Enough looked at)$/ }).waitFor();
    await button(page, "Offer").click();
    await page.getByRole("heading", { name: `Offer ${to} at most` }).waitFor();
    await page.getByText(`At ${to} you earn just your €10 an hour.`).waitFor();
    await page.getByRole("textbox", { name: "Try a price" }).fill("30");
    await page.getByText(/^At €30: €\d+ an hour\.$/).waitFor();
    // What is owed is told apart, whether or not it pays.
    const owed = page.getByRole("region", { name: /looks owed/ });
    await owed.getByText("Serial number", { exact: true }).first().waitFor();

    await button(page, "Take home").click();
    expect(await page.getByLabel("What you paid").inputValue()).toBe("30");
    await page.getByLabel("What you call it (optional)").fill("Green racer");
    await button(page, "Take it home").click();
    await page.waitForURL("**/finds/own-*");
    await page.getByText(/Paid: €30\./).waitFor();
    await page.getByText("Green racer").first().waitFor();
  }, 60_000);

  test("an answer given here stands on the long form, and one given there is not asked here", async ({
    page,
  }) => {
    await start(page);
    await reach(page, "Rock the headset");
    await press(page, /^Rough/);
    await page.getByRole("link", { name: "All the details" }).click();
    const line = page.locator("details.check").filter({ hasText: "Headset play and roughness" });
    await line.getByText("Rough", { exact: true }).waitFor();
    await page.goBack();
    await page.locator(".lookrows b").getByText("Headset").waitFor();
    await page.reload();
    await was(page)
      .getByText(/^Headset: rough\./)
      .waitFor();
  });

  test("undo walks back through every answer to the first pick", async ({ page }) => {
    await start(page);
    const first = await most(page).textContent();
    const asked = await heading(page).textContent();
    await press(page, /./);
    await button(page, "Can\u2019t tell").click();
    await button(page, "Undo").click();
    await button(page, "Undo").click();
    await expect.poll(() => heading(page).textContent(), PATIENT).toBe(asked);
    await expect.poll(() => most(page).textContent(), PATIENT).toBe(first);
    await button(page, "Undo").click();
    await page.getByRole("heading", { level: 1, name: "What do they ask?" }).waitFor();
    for (const question of [
      "How good were its parts when new?",
      "What is the frame made of?",
      "From when?",
      "What kind is it?",
    ]) {
      await button(page, "Undo").click();
      await page.getByRole("heading", { level: 1, name: question }).waitFor();
    }
    expect(await button(page, "Undo").count()).toBe(0);
  });

  test("can't tell moves nothing and is not asked again; later comes back", async ({ page }) => {
    await start(page);
    const asked = (await heading(page).textContent()) ?? "";
    const before = await most(page).textContent();
    await button(page, "Can\u2019t tell").click();
    await was(page)
      .getByText(/: can\u2019t tell\.$/)
      .waitFor();
    expect(await heading(page).textContent()).not.toBe(asked);
    expect(await most(page).textContent()).toBe(before);
    const put = (await heading(page).textContent()) ?? "";
    await button(page, "Later").click();
    // Nothing else is worth its minute: the page ends, and comes back to what was put off, not to what cannot be told.
    await page.getByText("One look is still worth its minute.").waitFor();
    await button(page, "Look on").click();
    await expect.poll(() => heading(page).textContent(), PATIENT).toBe(put);
  });

  test("asks front then rear, or both alike at once", async ({ page }) => {
    await start(page);
    await reach(page, "Press the tyre\u2019s sidewall: front");
    await press(page, /^Worn/);
    expect(await heading(page).textContent()).toBe("Press the tyre\u2019s sidewall: rear");
    await press(page, /^Good/);
    await was(page)
      .getByText(/^Tyre, rear: good\./)
      .waitFor();
    await button(page, "Undo").click();
    await button(page, "Undo").click();
    expect(await heading(page).textContent()).toBe("Press the tyre\u2019s sidewall: front");
    await page.getByLabel("Both wheels alike").check();
    await press(page, /^Worn/);
    await was(page)
      .getByText(/^Tyre: worn\./)
      .waitFor();
    expect(await heading(page).textContent()).not.toMatch(/^Press the tyre/);
  });

  test("takes a measurement, and keeps one that is refused beside its reason", async ({ page }) => {
    await start(page);
    await reach(page, "Look for the stem\u2019s mark");
    await page.getByText("Measure it instead").click();
    await page.getByRole("textbox", { name: "Length in the steerer" }).fill("900");
    await page.getByRole("textbox", { name: /^Marked minimum/ }).fill("56");
    await button(page, "Take this reading").click();
    await card(page)
      .getByText(/at most 400|400 or less|400 mm/)
      .first()
      .waitFor();
    expect(await page.getByRole("textbox", { name: "Length in the steerer" }).inputValue()).toBe("900");
    expect(await heading(page).textContent()).toBe("Look for the stem\u2019s mark");
    await page.getByRole("textbox", { name: "Length in the steerer" }).fill("70");
    await button(page, "Take this reading").click();
    await was(page)
      .getByText(/^Stem depth: 70 and 56 mm\./)
      .waitFor();
    await expect.poll(() => heading(page).textContent(), PATIENT).not.toBe("Look for the stem\u2019s mark");
  });

  test("ends at once where nothing could make it worth its price, and lets the user look on anyway", async ({
    page,
  }) => {
    await start(page, RACER, "900");
    await page.getByRole("heading", { name: "No look pays here" }).waitFor();
    await bar(page).getByText("Not for €900", { exact: true }).waitFor();
    expect(await page.locator(".foot.dashed").count()).toBe(0);
    await button(page, "Offer").click();
    await page.getByText("Before you pay, still to ask: serial number and papers.").waitFor();
    await button(page, "Look on anyway").click();
    await page.getByText("After this, no other look is worth its minute.").waitFor();
    await press(page, /./);
    await page.getByText("After this, no other look is worth its minute.").waitFor();
    await button(page, "Decide on what you saw").click();
    await page.getByRole("heading", { name: "Enough looked at" }).waitFor();
  });

  test("a removed serial number stops everything: no money, no bargaining, and a way back", async ({
    page,
  }) => {
    await start(page);
    await reach(page, "Read the serial number");
    await card(page)
      .getByRole("button", { name: /^Removed/ })
      .click();
    await page.getByRole("heading", { level: 2, name: /^Stopped\. Serial number/ }).waitFor();
    await settled(page);
    await bar(page).getByText("Do not pay, do not bargain.").waitFor();
    expect(await bar(page).textContent()).not.toContain("€");
    expect(await page.locator("main").textContent()).not.toContain("€");
    await expectSoundHere(page, "stopped");
    await button(page, "Undo").click();
    await expect.poll(() => heading(page).textContent(), PATIENT).toBe("Read the serial number");
    await most(page).waitFor();
  });

  test("a hard caution opens on the card that raised it, before the next look", async ({ page }) => {
    await start(page);
    await reach(page, "Look for cracks");
    await card(page)
      .getByRole("button", { name: /^Crack in the frame itself/ })
      .click();
    await card(page).locator(".warning.stop").first().waitFor();
    expect(await heading(page).textContent()).toBe("Look for cracks");
    await card(page).getByText("You saw: Crack in the frame itself.").waitFor();
    await expectSoundHere(page, "caution");
    await button(page, "Go on looking").click();
    await expect.poll(() => heading(page).textContent(), PATIENT).not.toBe("Look for cracks");
    await page.getByText(/^Bear in mind \(\d+\)$/).waitFor();
  });

  test("is done with the keyboard alone, and the single keys can be turned off", async ({ page }) => {
    await page.goto("/spot");
    await page.getByRole("heading", { level: 1, name: "What kind is it?" }).waitFor();
    for (const pick of RACER) {
      await button(page, pick).focus();
      await page.keyboard.press("Enter");
      // The next question takes the focus.
      await button(page, pick).waitFor({ state: "detached" });
      await page.locator("h1:focus").waitFor();
    }
    await page.getByLabel("Asking price").focus();
    await page.keyboard.type("70");
    await page.keyboard.press("Enter");
    await heading(page).waitFor();
    await expect
      .poll(() => heading(page).evaluate((one) => one === document.activeElement), PATIENT)
      .toBe(true);
    const first = await heading(page).textContent();
    await page.keyboard.press("1");
    await expect.poll(() => heading(page).textContent(), PATIENT).not.toBe(first);
    await settled(page);
    // Verdict and offer are spoken once it has settled.
    await expect
      .poll(() => bar(page).locator("[aria-live]").textContent(), PATIENT)
      .toMatch(/\. .*Offer .*€\d+/);
    const second = await heading(page).textContent();
    await page.keyboard.press("0");
    await expect.poll(() => heading(page).textContent(), PATIENT).not.toBe(second);
    await page.keyboard.press("u");
    await expect.poll(() => heading(page).textContent(), PATIENT).toBe(second);
    await page.keyboard.press("U");
    await expect.poll(() => heading(page).textContent(), PATIENT).toBe(first);
    await page.getByLabel(/^Keys answer/).uncheck();
    await page.keyboard.press("1");
    await page.waitForTimeout(400);
    expect(await heading(page).textContent()).toBe(first);
    // A digit that is typed into a field is no answer either.
    await page.getByLabel(/^Keys answer/).check();
    await button(page, "Decide on what you saw").click();
    await button(page, "Offer").click();
    await page.getByRole("textbox", { name: "Try a price" }).fill("");
    await page.getByRole("textbox", { name: "Try a price" }).focus();
    await page.keyboard.type("10");
    await page.getByText(/^At €10: /).waitFor();
  });

  test("gloves make the buttons 60 px high, and stay on", async ({ page }) => {
    await start(page);
    const height = () =>
      card(page)
        .locator(".press")
        .first()
        .evaluate((one) => one.getBoundingClientRect().height);
    expect(await height()).toBeGreaterThanOrEqual(52);
    await page.getByLabel("Gloves on").check();
    await page.reload();
    await heading(page).waitFor();
    const all = await card(page)
      .locator(".press")
      .evaluateAll((levels) => levels.map((one) => one.getBoundingClientRect().height));
    expect(Math.min(...all)).toBeGreaterThanOrEqual(60);
  });

  test("has nothing that axe finds while it is described and looked at", async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/spot");
    await page.getByRole("heading", { level: 1, name: "What kind is it?" }).waitFor();
    await expectSoundHere(page, "pick");
    for (const pick of RACER) await button(page, pick).click();
    await expectSoundHere(page, "price");
    await button(page, "Not known yet").click();
    await heading(page).waitFor();
    // The desk last: the page stays there.
    await expectSoundHere(page, "card", WIDTHS);
  });

  test("has nothing that axe finds however it ends, at 390 pixels", async ({ page }) => {
    await start(page);
    await button(page, "Decide on what you saw").click();
    for (const choice of ["Offer", "Leave", "Take home"]) {
      const ending = page.locator(".endings").getByRole("button", { name: choice });
      await ending.click();
      expect(await ending.getAttribute("aria-expanded")).toBe("true");
      await expectSoundHere(page, choice);
    }
  });

  test("of an invented find offers a copy, which is looked at in its place", async ({ page }) => {
    await page.goto("/spot/plum-hybrid");
    await page.getByRole("heading", { level: 1, name: /^Plum hybrid is an invented find/ }).waitFor();
    await expectSound(page, { place: "main" });
    await button(page, "Copy to ask what if").click();
    await page.waitForURL("**/spot/own-*");
    await bar(page)
      .getByText(/^At the €35 asked: /)
      .waitFor();
  });

  test("has room for text at 200 % on a phone", async ({ page }) => {
    await start(page);
    const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
    await page.addStyleTag({ content: "html { font-size: 200% }" });
    await expect.poll(wide, { message: "card", ...PATIENT }).toBeLessThanOrEqual(390);
    await button(page, "Decide on what you saw").click();
    await button(page, "Offer").click();
    await expect.poll(wide, { message: "offer", ...PATIENT }).toBeLessThanOrEqual(390);
  });
});
