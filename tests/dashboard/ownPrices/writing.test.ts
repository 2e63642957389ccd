import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { EXAMPLE } from "../../../dashboard/ownPrices/columns.ts";
import {
  priceBookTemplate,
  priceBookToCsv,
  readPriceBook,
  readSales,
  rejectedRows,
  salesTemplate,
  salesToCsv,
} from "../../../dashboard/ownPrices/files.ts";
import { textOf } from "../../../dashboard/ownPrices/fileText.ts";
import type { Sale } from "../../../dashboard/ownPrices/sale.ts";
import { KINDS, STATES } from "../../../dashboard/ownPrices/saleWords.ts";
import { CHOICE_FIELDS } from "../../../dashboard/ownPrices/vocabulary.ts";
import { TODAY, VOCABULARY } from "./vocabulary.ts";

const sales = (text: string) => readSales(text, VOCABULARY, TODAY, "EUR");
const word = (choices: readonly { value: string }[]) => fc.constantFrom(...choices.map(({ value }) => value));
/** Any text on one line that a cell keeps as it is: no space at its ends, no two side by side. */
const name = fc
  .string({ unit: "grapheme", maxLength: 40 })
  .map((text) =>
    text
      .replace(/\ufeff/g, "")
      .replace(/\s+/g, " ")
      .trim(),
  )
  .filter((text) => text !== "" && text.length <= 120);
const share = fc.double({ min: 0, max: 1, noNaN: true }).map((value) => Math.round(value * 1e9) / 1e9);
const day = fc
  .date({ min: new Date("1950-01-01"), max: new Date(`${TODAY}T00:00:00Z`), noInvalidDate: true })
  .map((at) => at.toISOString().slice(0, 10));
const choices = Object.fromEntries(
  CHOICE_FIELDS.filter((field) => field !== "era").map((field) => [field, word(VOCABULARY.choices[field])]),
);
const anySale = fc.record(
  {
    price: fc.integer({ min: 1, max: 1e8 }).map((cents) => cents / 100),
    currency: fc.constant("EUR"),
    kind: word(KINDS),
    date: day,
    name,
    ...choices,
    year: fc.integer({ min: 1880, max: 2026 }),
    state: word(STATES),
    condition: share,
    originality: share,
    desirability: share,
    sameModelAs: fc.uniqueArray(
      fc.stringMatching(/^[a-z0-9-]{1,12}$/).filter((id) => !id.startsWith("-")),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  },
  { requiredKeys: ["price", "currency", "kind", "date"] },
) as fc.Arbitrary<Sale>;

describe("what is written is read back the same", () => {
  test("sales, whatever their names hold", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(anySale, { selector: (sale) => JSON.stringify(sale), maxLength: 12 }),
        (rows) => {
          const reading = sales(salesToCsv(rows, VOCABULARY));
          expect(reading.faults).toEqual([]);
          expect(reading.rows).toEqual(rows);
        },
      ),
    );
  });

  test.each([
    'say "when", he said',
    "=1+1",
    "'=1+1",
    "+49",
    "@home",
    "-5",
    "a;b\tc",
    "\u00e4\u6f22\ud83d\udeb2",
    "'",
  ])("a sale called %s", (called) => {
    const sale: Sale = {
      price: 1,
      currency: "EUR",
      kind: "paid",
      date: TODAY,
      name: called.replace("\t", " "),
    };
    expect(sales(salesToCsv([sale], VOCABULARY)).rows).toEqual([sale]);
  });

  test("no cell is one that a spreadsheet runs (OWASP, CSV Injection: begins with =, +, -, @)", () => {
    const text = salesToCsv(
      ["=1+1", "+1", "-1", "@x"].map((name) => ({
        price: 1,
        currency: "EUR",
        kind: "paid",
        date: TODAY,
        name,
      })),
      VOCABULARY,
    );
    expect(text).not.toMatch(/(^|,|")[=+\-@]/m);
  });

  test("a price book", () => {
    const rows = VOCABULARY.parts.map(({ id }, i) => ({ part: id, price: i + 0.25, currency: "EUR" }));
    rows[0] = { ...rows[0]!, price: 0.0000001 };
    expect(readPriceBook(priceBookToCsv(rows, VOCABULARY), VOCABULARY, TODAY, "EUR").rows).toEqual(rows);
  });

  test("5,000 sales, in far less than a second and a half", () => {
    const rows = fc.sample(anySale, { numRuns: 5000, seed: 7 });
    const text = salesToCsv(
      rows.map((sale, i) => ({ ...sale, name: `${i}` })),
      VOCABULARY,
    );
    const begun = performance.now();
    expect(sales(text).rows).toHaveLength(5000);
    expect(performance.now() - begun).toBeLessThan(1500);
  });
});

describe("a template", () => {
  const unmarked = (text: string) => text.replace(EXAMPLE, "");

  test("of sales holds every column and one row, marked as invented, that reads without a fault", () => {
    const text = salesTemplate(VOCABULARY, "EUR");
    expect(text).toContain(EXAMPLE);
    expect(sales(text)).toMatchObject({ rows: [], faults: [], examples: 1 });
    const { rows, faults } = sales(unmarked(text));
    expect(faults).toEqual([]);
    expect(rows).toHaveLength(1);
    expect(sales(salesToCsv(rows, VOCABULARY)).rows).toEqual(rows);
  });

  test("of a price book does so too", () => {
    const text = priceBookTemplate(VOCABULARY, "EUR");
    const read = (file: string) => readPriceBook(file, VOCABULARY, TODAY, "EUR");
    expect(read(text)).toMatchObject({ rows: [], faults: [], examples: 1 });
    expect(read(unmarked(text))).toMatchObject({ rows: [{ currency: "EUR" }], faults: [] });
  });
});

describe("the rejected rows as a file", () => {
  test("hold what was wrong in the note, and once mended are read", () => {
    const reading = sales(
      'price,currency,kind,date,note\n0,EUR,paid,2026-05-31,mine\n5,EUR,paid,2026-05-31,\n7,GBP,"x,y",2026-05-31,\n',
    );
    const text = rejectedRows(reading);
    expect(text.split("\r\n")[0]).toBe("price,currency,kind,date,note");
    expect(text.trim().split("\r\n")).toHaveLength(3);
    expect(text).toContain("price: ");
    expect(text).toMatch(/currency: GBP is not EUR.*kind: /);
    const mended = text.replace("0,EUR", "9,EUR").replace('7,GBP,"x,y"', "7,EUR,asked");
    expect(sales(mended)).toMatchObject({ faults: [], rows: [{ price: 9 }, { price: 7 }] });
  });
});

describe("the text of a file", () => {
  const name = "Stra\u00dfenrad";
  test("is found in UTF-8, UTF-16 and Windows-1252", () => {
    const utf16 = Uint8Array.from([
      0xff,
      0xfe,
      ...[...name].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
    ]);
    expect(textOf(new TextEncoder().encode(name))).toBe(name);
    expect(textOf(utf16)).toBe(name);
    // Windows-1252 has the letter at 0xDF (as ISO 8859-1 does).
    expect(textOf(Uint8Array.from([...name].map((c) => c.charCodeAt(0))))).toBe(name);
    expect(textOf(new Uint8Array())).toBe("");
  });
});
