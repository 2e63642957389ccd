import { describe, expect, test } from "vitest";
import type { Sale } from "../../../dashboard/ownPrices/sale.ts";
import { pricesTitle, saleFacts, saleName } from "../../../dashboard/words/ownPrices.ts";
import { VOCABULARY } from "../ownPrices/vocabulary.ts";

describe("the page's answer", () => {
  test.each([
    [12, 3, "12 sales of your own, 3 prices of your own; the rest is invented"],
    [1, 0, "1 sale of your own; the rest is invented"],
    [0, 1, "1 price of your own; the rest is invented"],
    [1204, 0, "1,204 sales of your own; the rest is invented"],
    [0, 0, "No sale and no price of your own yet; all of them are invented"],
  ])("of %i sales and %i prices", (sales, prices, title) => {
    expect(pricesTitle(sales, prices)).toBe(title);
  });
});

describe("a sale in words", () => {
  const sale: Sale = { price: 1, currency: "EUR", kind: "asked", date: "2026-05-03" };

  test("says what is known and no more", () => {
    expect(saleName(sale, VOCABULARY)).toBe("A bicycle");
    expect(saleFacts(sale, VOCABULARY)).toBe("Asked, 3 May 2026");
    const known: Sale = { ...sale, category: "bmx", era: "1980s", year: 1985, componentTier: "top" };
    expect(saleName(known, VOCABULARY)).toBe("BMX");
    expect(saleFacts(known, VOCABULARY)).toBe("Asked, 3 May 2026; 1985, top tier");
    const named: Sale = { ...known, name: "Red one", state: "frame-and-fork" };
    expect(saleName(named, VOCABULARY)).toBe("Red one");
    expect(saleFacts(named, VOCABULARY)).toBe("Asked, 3 May 2026; BMX, 1985, top tier, frame and fork");
    for (const [condition, words] of [
      [0.75, "ready and tidy"],
      [0.5, "sound but tired"],
      [1, "fully restored"],
    ] as const) {
      expect(saleFacts({ ...sale, condition }, VOCABULARY)).toBe(`Asked, 3 May 2026; ${words}`);
    }
  });
});
