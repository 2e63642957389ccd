import { expect } from "vitest";
import { test } from "./setup/browserTest.ts";
import { describeFind, headed, openCheck } from "./setup/dashboard.ts";

const RACER = ["Road racing", "1980s", "Steel", "Top"];

test("a German browser shows figures as German has them, and reads them with a comma and with a point", {
  timeout: 60_000,
}, async ({ site, browser }) => {
  const context = await browser.newContext({ baseURL: site.href, locale: "de-DE" });
  try {
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await describeFind(page, RACER, /^Restore it: \d+\s€ an hour, likely between \d+\s€ and \d+\s€\.$/);

    await page.getByRole("button", { name: /your hourly goal/ }).click();
    const goal = page.getByLabel("What one more hour must earn", { exact: true });
    await goal.fill("12,5");
    await page.getByRole("button", { name: "Done" }).click();
    await page.getByText(/^12,50\s€\/h$/).waitFor();
    await page.reload();
    await page.getByRole("button", { name: /your hourly goal/ }).click();
    expect(await goal.inputValue()).toBe("12,5");
    await goal.fill("13.5");
    await page.getByRole("button", { name: "Done" }).click();
    await page.getByText(/^13,50\s€\/h$/).waitFor();

    await page.locator("details.group > summary").filter({ hasText: "Transmission" }).click();
    const chain = await openCheck(page, "Chain elongation");
    const length = chain.getByRole("textbox", { name: /length of 24 pitches/i });
    await length.fill("307.6");
    await chain.locator(".state").getByText("307,6 mm").waitFor();
    await length.fill("306,3");
    await chain.locator(".state").getByText("306,3 mm").waitFor();
    await length.fill("viel");
    await chain.getByText("This is no number. Write it like 43,5.").waitFor();

    await page.getByRole("link", { name: "See the whole answer" }).click();
    await headed(page, /^Restore/);
    // Hours, and a bill to the cent.
    await page.getByRole("heading", { name: /^\d+,\d hours? and \d+\s€ to / }).waitFor();
    await page.locator(".shopping summary").click();
    await page
      .locator(".shopping tfoot")
      .getByText(/^\d+,\d\d\s€$/)
      .waitFor();
  } finally {
    await context.close();
  }
});
