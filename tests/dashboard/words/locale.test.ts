import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import { dayWords } from "../../../dashboard/words/day.ts";
import { figure, grouped } from "../../../dashboard/words/figure.ts";
import { locale, writeFor } from "../../../dashboard/words/locale.ts";
import { billed, goalMoney, money, rate, withMoney } from "../../../dashboard/words/money.ts";
import { likelyRate } from "../../../dashboard/words/range.ts";
import { readNumber, typedNumber } from "../../../dashboard/words/readNumber.ts";
import { hours, withHours } from "../../../dashboard/words/time.ts";

afterEach(() => writeFor([]));

/** The space that keeps a figure with its unit. */
const plainSpaces = (text: string) => text.replace(/[\u00a0\u202f]/g, " ");

describe("figures in the user's locale", () => {
  // As the Unicode CLDR has these locales (ECMA-402 takes its patterns from there).
  test.for([
    ["en-GB", "€1,250", "−€30", "€14.50", "8.9 h", "1,204", "3 May 2026"],
    ["en-US", "€1,250", "−€30", "€14.50", "8.9 h", "1,204", "May 3, 2026"],
    ["de-DE", "1.250 €", "−30 €", "14,50 €", "8,9 h", "1.204", "03.05.2026"],
    ["fr-FR", "1 250 €", "−30 €", "14,50 €", "8,9 h", "1 204", "03/05/2026"],
    ["sv-SE", "1 250 €", "−30 €", "14,50 €", "8,9 h", "1 204", "2026-05-03"],
  ] as const)("in %s", ([tag, dear, loss, bill, time, count, day]) => {
    writeFor([tag]);
    expect(
      [
        money(1250, "EUR"),
        money(-30, "EUR"),
        billed(14.5, "EUR"),
        hours(8.9),
        grouped(1204),
        dayWords("2026-05-03"),
      ].map(plainSpaces),
    ).toEqual([dear, loss, bill, time, count, day]);
  });

  test("stand in English sentences, those of the service too", () => {
    writeFor(["de-DE", "en"]);
    expect(plainSpaces(likelyRate({ rate: 16, p10: 5, p90: 28 }, "EUR"))).toBe(
      "16 € an hour, likely between 5 € and 28 €",
    );
    expect(plainSpaces(withHours(withMoney("brings 279 EUR for 4.8 h", "EUR")))).toBe(
      "brings 280 € for 4,8 h",
    );
    expect(plainSpaces(goalMoney(12.5, "EUR"))).toBe("12,50 €");
    expect(figure(12.5, 2)).toBe("12,5");
  });

  test("keep the digits 0 to 9 and the direction of English writing", () => {
    for (const tag of ["ar-EG", "fa-IR", "hi-IN-u-nu-deva", "he-IL"]) {
      writeFor([tag]);
      for (const text of [money(-1250, "EUR"), figure(12.5, 1), rate(8, "USD"), dayWords("2026-05-03")]) {
        expect(text, tag).toMatch(/\d/);
        // No digit of another writing, no mark that turns the direction.
        expect(text, tag).not.toMatch(/[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\u061c\u200e\u200f]/);
      }
    }
  });

  test("are those of plain English where the browser says nothing of use", () => {
    for (const wished of [[], ["x"], ["no_such_tag!"], ["zz-ZZ"]]) {
      writeFor(wished);
      expect(locale()).toBe("en-GB");
    }
    writeFor(["zz-ZZ", "de-AT"]);
    expect(figure(1.5, 1)).toBe("1,5");
  });
});

describe("figures that are typed", () => {
  const EVERYWHERE = [
    ["12,5", 12.5],
    ["12.5", 12.5],
    ["−3,25", -3.25],
    ["1 250", 1250],
    ["1’250.5", 1250.5],
    [",5", 0.5],
    ["40", 40],
    ["", undefined],
    ["twelve", null],
    ["1.2.3", null],
    ["1,2,3", null],
  ] as const;

  test.for(["en-GB", "de-DE", "fr-FR", "de-CH", "en-IN"])(
    "are read with a comma and with a point in %s",
    (tag) => {
      writeFor([tag]);
      for (const [text, value] of EVERYWHERE) expect(readNumber(text), text).toBe(value);
    },
  );

  test.for([
    ["en-GB", "1,250", 1250],
    ["en-GB", "1,234,567.8", 1234567.8],
    ["en-GB", "1.250", 1.25],
    ["en-IN", "1,23,456", 123456],
    ["de-DE", "1.250", 1250],
    ["de-DE", "1.234.567,8", 1234567.8],
    ["de-DE", "1,250", 1.25],
  ] as const)("in %s %s is %d", ([tag, text, value]) => {
    writeFor([tag]);
    expect(readNumber(text)).toBe(value);
  });

  test("come back as they stood in the field, in any locale", () => {
    const numbers = fc.integer({ min: -1e7, max: 1e7 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.constantFrom("en-GB", "de-DE", "fr-FR", "de-CH", "pt-BR", "nb-NO"),
        numbers,
        (tag, value) => {
          writeFor([tag]);
          expect(readNumber(typedNumber(value))).toBe(value);
          expect(readNumber(grouped(Math.round(value)))).toBe(Math.round(value) + 0);
        },
      ),
    );
  });
});
