import { describe, expect } from "vitest";
import { test, testOfFirstVisit } from "./setup/browserTest.ts";
import {
  describeFind,
  headed,
  openCheck,
  openDescribed,
  openFinds,
  said,
  setGoal,
  withoutAnswers,
} from "./setup/dashboard.ts";
import { expectSound } from "./setup/sound.ts";

const COURSES = ["Restore", "Make safe", "Sell as found", "Break for parts", "Leave"];
/** A steel racer of the top tier: worth restoring until its frame turns out bent. */
const RACER = ["Road racing", "1980s", "Steel", "Top"];
const MONEY = /€\s?\d|\d\s?(€|EUR)/;

describe("the first page", () => {
  test("charts seven invented finds, labelled so, with every course among the answers, over the goal", async ({
    page,
    site,
  }) => {
    const { defaults } = await (await fetch(new URL("/v1/reference", site))).json();
    const rows = await openFinds(page);
    await headed(page, new RegExp(`seven earns? more than your €${defaults.hourlyGoal} an hour`));
    expect(await rows.count()).toBe(7);
    expect(await rows.getByText("invented", { exact: true }).count()).toBe(7);
    expect(new Set(await rows.locator(".course").allInnerTexts())).toEqual(new Set(COURSES));
    await page.getByText(`your goal €${defaults.hourlyGoal}/h`).waitFor();
    await page.getByText("White carbon racer: stopped.").waitFor();
    await page.getByText("no price here is a market price").waitFor();
  });

  test("leads to a find with its decision, reason, hours, cost, value, plan with proof, readiness and cautions, and back", async ({
    page,
  }) => {
    await openFinds(page);
    await page.getByRole("link", { name: "Copper track bike" }).click();
    await headed(page, /^Restore the copper track bike: €\d+ an hour, likely between −?€\d+ and €\d+\.$/);
    const verdict = page.getByRole("region", { name: "Verdict", exact: true });
    await verdict.getByText("Restore it").waitFor();
    await verdict.getByText(/^Restoring is expected to bring €\d+ for [\d.]+ h/).waitFor();
    await verdict.getByText(/^Pay at most €\d+$/).waitFor();
    await verdict.getByText(/^[\d.]+ h of your time$/).waitFor();
    await page
      .getByRole("region", { name: /^Made safe it brings about €\d+, restored about €\d+$/ })
      .waitFor();
    await page.getByRole("region", { name: /^Restoring brings most/ }).waitFor();
    await page.getByRole("region", { name: /^Not roadworthy yet: one fault to cure$/ }).waitFor();
    await page.getByRole("region", { name: /cautions?, \w+ to bear in mind$/ }).waitFor();
    const plan = page.getByRole("region", { name: /^[\d.]+ hours and €\d+ to restore it$/ });
    const job = plan.getByRole("listitem").filter({ hasText: "New tyres" });
    await job.locator("summary").click();
    await job.getByText("Proof").waitFor();
    expect(await job.getByRole("definition").last().textContent()).toMatch(/\w+/);
    // The API writes amounts with the currency's code; the screen never does.
    expect(await said(page)).not.toContain("EUR");
    await page.getByRole("link", { name: "Finds", exact: true }).last().click();
    await headed(page, /seven earns? more/);
  });

  test("follows another goal in headline and chart, and keeps it over a reload", async ({ page }) => {
    const rows = await openFinds(page);
    const before = await headed(page, /seven earns? more/);
    await setGoal(page, 19);
    const after = await headed(page, /€19 an hour/);
    expect(after.split(" ")[0]).not.toBe(before.split(" ")[0]);
    await page.getByText("your goal €19/h").waitFor();
    await page.getByRole("application", { name: /cross the goal of €19/ }).waitFor();
    await page.reload();
    expect(await headed(page, /€19 an hour/)).toBe(after);
    expect(await rows.count()).toBe(7);
  });

  test("shows no figure for a stopped find, on its own page neither", async ({ page }) => {
    await openFinds(page);
    await page.getByRole("link", { name: "What to do" }).click();
    await headed(page, /^Stopped\. Serial number: filed, drilled or over-stamped\.$/);
    await page.getByText("While this stands, no figure is worked out.").waitFor();
    expect(await said(page)).not.toMatch(MONEY);
    expect(await page.locator("canvas").count()).toBe(0);
  });
});

describe("a find of one's own", () => {
  test("gets an answer as it is described; a bent front end turns the decision, taking it back turns it back", async ({
    page,
  }) => {
    await describeFind(page, RACER, /^Restore it: /);
    const foot = page.getByRole("region", { name: "Verdict so far" });
    const check = await openCheck(page, "Signs of a front-end collision");
    await check.getByRole("radio", { name: /^Plain signs/ }).check();
    await headed(page, /^Break it for parts: /);
    await foot.getByText("Break it for parts", { exact: true }).waitFor();
    await foot.getByText(/^€\d+ an hour, likely between €\d+ and €\d+$/).waitFor();
    await check.getByRole("radio", { name: /^Not looked at/ }).check();
    await headed(page, /^Restore it: /);
    await foot.getByText("Restore it", { exact: true }).waitFor();
  });

  test("whose serial number was removed is stopped, with no figure on any page", async ({ page }) => {
    await openDescribed(page, RACER, /^Restore it: /);
    const price = page.getByLabel("Asking price, or what you paid");
    await price.fill("80");
    await page.getByLabel("Name on the chart (optional)").fill("Hill racer");
    await page.getByText(/^At the €80 asked: /).waitFor();
    const check = await openCheck(page, "Serial number");
    await check.getByRole("radio", { name: /^Removed/ }).check();
    await headed(page, /^Stopped\. Serial number: /);
    expect(await said(page)).toMatch(/No figure is worked out/);
    expect(await said(page)).not.toMatch(MONEY);
    expect(await price.inputValue()).toBe("80");
    await page.getByRole("link", { name: "See the whole answer" }).click();
    await page.getByText("While this stands, no figure is worked out.").waitFor();
    expect(await said(page)).not.toMatch(MONEY);
    await page.getByRole("link", { name: "Finds", exact: true }).last().click();
    await page.getByText("Hill racer: stopped.").waitFor();
  });

  test("keeps a refused measurement, with the reason beside its field, until it is mended", async ({
    page,
  }) => {
    await openDescribed(page, RACER, /^Restore it: /);
    await page
      .locator("details.group")
      .filter({ hasText: "Transmission" })
      .locator("summary")
      .first()
      .click();
    const check = await openCheck(page, "Chain elongation");
    const field = check.getByLabel(/^Length of 24 pitches/);
    await field.fill("280");
    const reason = check.getByRole("alert");
    await reason.waitFor();
    expect(await reason.textContent()).toMatch(/^Length of 24 pitches: at least [\d.]+ mm, .* not 280\./);
    expect(await field.inputValue()).toBe("280");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    await page.getByText("An answer is refused; the figures are those from before.").waitFor();
    // 306.3 mm over 24 half-inch pitches of 304.8 mm: 0.49 % longer than new.
    await field.fill("306,3");
    await check.getByText(/^On the line between \w+ and .* \(0\.49 %\): measure again\.$/).waitFor();
    expect(await reason.count()).toBe(0);
    expect(await field.inputValue()).toBe("306,3");
  });

  test("stands beside the invented ones, and is still there after a reload", async ({ page }) => {
    await openDescribed(page, RACER, /^Restore it: /);
    await page.getByLabel("Name on the chart (optional)").fill("Hill racer");
    await page.getByRole("link", { name: "Finds", exact: true }).last().click();
    const rows = page.locator(".rows > li");
    const own = rows.filter({ has: page.getByRole("link", { name: "Hill racer" }) });
    await own.getByText("yours", { exact: true }).waitFor();
    await page.reload();
    await own.getByText("yours", { exact: true }).waitFor();
    expect(await rows.count()).toBe(8);
    await own.getByRole("link").click();
    await headed(page, /^Restore Hill racer: /);
    expect(await said(page)).toContain("Road racing, 1980s, steel, top tier.");
  });
});

describe("a find that is not described far enough", () => {
  test("is removed only once that is asked, and by nobody who thinks better of it", async ({ page }) => {
    await page.goto("/describe");
    await page.getByRole("radio", { name: "Hybrid", exact: true }).check();
    await page.getByRole("link", { name: "Finds", exact: true }).last().click();
    const open = page.getByRole("region", { name: "Not described far enough to work out" });
    const remove = open.getByRole("button", { name: "Remove Hybrid" });
    await remove.click();
    const keep = open.getByRole("button", { name: "Keep it" });
    await expect.poll(() => keep.evaluate((one) => one === document.activeElement)).toBe(true);
    await expectSound(page, { place: ".later" });
    await keep.click();
    await open.getByRole("link", { name: "Hybrid" }).waitFor();
    await remove.click();
    await open.getByRole("button", { name: "Remove for good" }).click();
    await expect.poll(() => open.count()).toBe(0);
    // What had the focus is gone: it is not lost.
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
    await page.reload();
    await openFinds(page);
    expect(await open.count()).toBe(0);
  });
});

describe("without the API, where the engine cannot be had either", () => {
  testOfFirstVisit("the first page says what happened, and goes on when tried again", async ({ page }) => {
    const giveBack = await withoutAnswers(page);
    await page.goto("/");
    await headed(page, /^The catalogue of checks and prices did not come\.$/);
    await page.getByRole("alert").getByText("No signal.").waitFor();
    await expectSound(page);
    await giveBack();
    await page.getByRole("button", { name: "Try again" }).click();
    await headed(page, /seven earns? more/);
  });

  testOfFirstVisit("a description is kept and asked about again", async ({ page }) => {
    await page.route("**/assets/engine.worker-*", (route) => route.abort());
    await describeFind(page, RACER, /^Restore it: /);
    const giveBack = await withoutAnswers(page);
    const price = page.getByLabel("Asking price, or what you paid");
    await price.fill("5000");
    await page
      .getByText("What you entered is kept; it is asked again once the connection is back.")
      .waitFor();
    expect(await price.inputValue()).toBe("5000");
    await headed(page, /^Restore it: /);
    // The answer from before is not held against the price it was not asked with.
    expect(await said(page)).not.toContain("5,000");
    await giveBack();
    await page.getByRole("button", { name: "Try again" }).click();
    await headed(page, /^Leave it: it bears .* at most, and €5,000 is asked\.$/);
    expect(await page.getByText("No signal.").count()).toBe(0);
  });
});
