import type { Locator, Page } from "playwright-core";

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
