import { describe, expect, test } from "vitest";
import {
  anHour,
  billed,
  currencySign,
  goalMoney,
  money,
  rate,
  roundMoney,
  withMoney,
} from "../../../dashboard/words/money.ts";

describe("money is rounded to what an estimate bears", () => {
  test.each([
    [76.4, "€76"],
    [99.4, "€99"],
    [99.6, "€100"],
    [102.4, "€100"],
    [102.5, "€105"],
    [143, "€145"],
    [1234, "€1,235"],
    [0, "€0"],
  ])("%f is shown as %s", (value, shown) => {
    expect(money(value, "EUR")).toBe(shown);
  });

  test("an amount below nought carries the minus sign U+2212 before the currency", () => {
    expect(money(-30, "EUR")).toBe("\u2212€30");
    expect(rate(-14.2, "EUR")).toBe("\u2212€14");
    expect(billed(-1.5, "EUR")).toBe("\u2212€1.50");
  });

  test("what rounds to nought carries no sign", () => {
    expect(money(-0.4, "EUR")).toBe("€0");
    expect(rate(-0.49, "EUR")).toBe("€0");
    expect(Object.is(roundMoney(-0.2), 0)).toBe(true);
  });

  test("gains and losses of the same size are rounded alike", () => {
    for (const value of [0.5, 2.5, 99.5, 102.5, 107.5]) expect(roundMoney(-value)).toBe(-roundMoney(value));
  });

  test("a bill is exact to the cent, a rate whole", () => {
    expect(billed(158.25, "EUR")).toBe("€158.25");
    expect(billed(4, "EUR")).toBe("€4.00");
    expect(anHour(15.7, "EUR")).toBe("€16 an hour");
    expect(rate(132.4, "EUR")).toBe("€132");
  });

  test("the goal stands as it was set", () => {
    expect(goalMoney(12, "EUR")).toBe("€12");
    expect(goalMoney(12.5, "EUR")).toBe("€12.50");
  });

  test("every currency carries its own sign", () => {
    expect(money(20, "GBP")).toBe("£20");
    expect(currencySign("SEK")).toBe("kr");
  });
});

describe("a sentence of the API's takes the screen's words for money", () => {
  test("amounts with the currency's code become rounded amounts with its sign", () => {
    expect(withMoney("It brings 279 EUR; after 10 EUR an hour, \u22124.6 EUR is left.", "EUR")).toBe(
      "It brings €280; after €10 an hour, \u2212€5 is left.",
    );
  });

  test("in every currency of the platform, gains and losses read as they do elsewhere on the screen", () => {
    for (const currency of Intl.supportedValuesOf("currency")) {
      for (const value of [0, 7, -7, 1285, -1285]) {
        const written = `${value < 0 ? "\u2212" : ""}${Math.abs(value)} ${currency}`;
        expect(withMoney(`Next best, with ${written} left.`, currency)).toBe(
          `Next best, with ${money(value, currency)} left.`,
        );
      }
    }
  });

  test("a hyphen behind a figure is no minus", () => {
    expect(withMoney("from 10-20 EUR", "EUR")).toBe("from 10-€20");
    expect(withMoney("-20 EUR", "EUR")).toBe("\u2212€20");
  });

  test("a figure that is no money stays", () => {
    expect(withMoney("2 checks and 8.5 h", "EUR")).toBe("2 checks and 8.5 h");
    expect(withMoney("10 GBP", "EUR")).toBe("10 GBP");
  });
});
