import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { expect } from "vitest";

/** A phone and a desk, in pixels. */
export const WIDTHS = [390, 1280] as const;

/** The rules of axe that look at colours: the theme changes nothing else. */
const OF_COLOURS = ["color-contrast", "link-in-text-block"];

/** Where and how it is looked. */
interface Look {
  /** Only what stands in here; the whole page where it is left out. */
  readonly place?: string;
  /** One after the other, on the same page. */
  readonly widths?: readonly number[];
  /** Names the state of the page where a test looks at several. */
  readonly state?: string;
}

/** At each width: axe finds nothing in either theme, and nothing scrolls sideways. The page is left at the last width. */
export async function expectSound(
  page: Page,
  { place, widths = WIDTHS, state = "" }: Look = {},
): Promise<void> {
  // Everything is drawn anew in another theme: the next width begins in the one that the last ended in.
  const themes: ("light" | "dark")[] = ["light", "dark"];
  for (const width of widths) {
    await page.setViewportSize({ width, height: 844 });
    for (const [i, theme] of themes.entries()) {
      await page.emulateMedia({ colorScheme: theme });
      const found = await faults(page, place, i === 0 ? undefined : OF_COLOURS);
      expect(found, `${state} ${width} ${theme}`).toEqual([]);
    }
    themes.reverse();
    const scrolled = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(scrolled, `${state} ${width}: nothing wider than the screen`).toBeLessThanOrEqual(width);
  }
}

/** What axe finds, each with its rule; by all its rules where none are named. */
async function faults(page: Page, place?: string, rules?: string[]): Promise<string[]> {
  // Its script is brought into a page once, and again only after the page was loaded anew.
  const isThere = await page.evaluate(() => "axe" in globalThis);
  // Of what is well only the name of the rule is worked out. Legacy leaves out frames of other hosts, which no page has,
  // and a blank page beside it for them.
  const axe = new AxeBuilder({ page, ...(isThere && { axeSource: ";" }) }).setLegacyMode(true).options({
    resultTypes: ["violations"],
    ...(rules === undefined ? {} : { runOnly: { type: "rule", values: rules } }),
  });
  if (place !== undefined) axe.include(place);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}
