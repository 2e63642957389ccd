import type { Locator, Page } from "playwright-core";
import { QUIET } from "./sharedPage.ts";

/** Steps that more than one test of the dashboard takes. */

/** Opens the first page and waits until its chart stands. */
export async function openFinds(page: Page): Promise<Locator> {
  await page.goto("/");
  await page.getByRole("application", { name: /^Margin per hour by find/ }).waitFor();
  return page.locator(".rows > li");
}

/** The page's answer in a sentence, once it reads so. */
export async function headed(page: Page, sentence: RegExp): Promise<string> {
  const heading = page.getByRole("heading", { level: 1, name: sentence });
  await heading.waitFor();
  return (await heading.textContent()) ?? "";
}

/** Describes a find by its four picks and waits for the first answer. */
export async function describeFind(page: Page, picks: readonly string[], first: RegExp): Promise<void> {
  await page.goto("/describe");
  for (const label of picks) await page.getByRole("radio", { name: label, exact: true }).first().check();
  await headed(page, first);
}

/** Where steps led, and what they left in the browser's storage. */
interface Led {
  readonly path: string;
  readonly stored: Readonly<Record<string, string>>;
}

const led = new Map<string, Led>();

/**
 * Brings a page to where steps by hand lead: the first time by the steps, afterwards straight to its address with what
 * they left in the browser.
 * @param where names the place; the same name, the same steps
 */
export async function ledTo(page: Page, where: string, steps: () => Promise<void>): Promise<void> {
  const known = led.get(where);
  if (known === undefined) {
    await steps();
    const left = await page.evaluate(() => ({ path: location.pathname, stored: { ...localStorage } }));
    led.set(where, left);
    return;
  }
  // What is stored for one file of the site is stored for all.
  if (new URL(page.url()).pathname !== QUIET) await page.goto(QUIET);
  await page.evaluate((stored) => void Object.assign(localStorage, stored), known.stored);
  await page.goto(known.path);
}

/** The form of a find that was described by its four picks and answered: described by hand the first time. */
export async function openDescribed(page: Page, picks: readonly string[], first: RegExp): Promise<void> {
  await ledTo(page, `described: ${picks.join(", ")}`, () => describeFind(page, picks, first));
  await headed(page, first);
}

/** The card of a check on the form, unfolded. */
export async function openCheck(page: Page, name: string): Promise<Locator> {
  const card = page.locator("details.check").filter({ has: page.getByText(name, { exact: true }) });
  await card.locator("summary").click();
  return card;
}

export async function setGoal(page: Page, goal: number): Promise<void> {
  await page.getByRole("button", { name: /your hourly goal/ }).click();
  await page.getByLabel("What one more hour must earn", { exact: true }).fill(String(goal));
  await page.getByRole("button", { name: "Done" }).click();
}

/** All that the page says below its masthead, the verdict at the foot included. */
export async function said(page: Page): Promise<string> {
  const places = await page.locator("main, section[aria-label='Verdict so far']").allInnerTexts();
  return places.join("\n");
}

/** Takes the API from the pages, and the engine that would answer instead; returns how to give both back. */
export async function withoutAnswers(page: Page): Promise<() => Promise<void>> {
  const places = ["**/v1/**", "**/assets/engine.worker-*"];
  for (const place of places) await page.route(place, (route) => route.abort());
  return async () => {
    for (const place of places) await page.unroute(place);
  };
}
