import { describe, expect, test } from "vitest";
import { EXAMPLE } from "../../../dashboard/ownPrices/columns.ts";
import { readSales } from "../../../dashboard/ownPrices/files.ts";
import { TODAY, VOCABULARY } from "./vocabulary.ts";

const read = (text: string) => readSales(text, VOCABULARY, TODAY, "EUR");
const HEAD = "price,currency,kind,date";
const PLAIN = { price: 120, currency: "EUR", kind: "paid", date: "2026-05-31" };
/** One row with one column more than the four that are needed. */
const withCell = (column: string, cell: string) =>
  read(`${HEAD},${column}\n120,EUR,paid,2026-05-31,${cell}\n`);

describe("a file of sales", () => {
  test("needs price, currency, kind and date alone; every other field is left out where unknown", () => {
    expect(read(`${HEAD},name,era\n120,EUR,paid,2026-05-31,,\n`)).toMatchObject({
      rows: [PLAIN],
      faults: [],
      duplicates: [],
    });
    expect(Object.keys(read(`${HEAD},name,era\n120,EUR,paid,2026-05-31,,\n`).rows[0]!)).toEqual(
      Object.keys(PLAIN),
    );
  });

  test("fills every field, by id or label, in any case, spaces or hyphens alike, columns in any order", () => {
    const text = [
      "Step-Through,same model as,desirability,originality,condition,state,drivetrain,place,size,tier,material,era,category,name,date,kind,currency,price",
      "Yes,plum-hybrid own-1,0.5,All original,ready and tidy,Does not ride,Hub gear,Country,very small,TOP,steel,Before 1970,road racing,Hill racer,2026-05-31,Asked,eur,99.95",
    ].join("\n");
    expect(read(text)).toMatchObject({
      faults: [],
      rows: [
        {
          price: 99.95,
          currency: "EUR",
          kind: "asked",
          date: "2026-05-31",
          name: "Hill racer",
          category: "road-racing",
          era: "pre-1970",
          frameMaterial: "steel",
          componentTier: "top",
          sizeClass: "very-small",
          place: "rural",
          drivetrain: "hub-gear",
          stepThrough: "yes",
          state: "does-not-ride",
          condition: 0.75,
          originality: 1,
          desirability: 0.5,
          sameModelAs: ["plum-hybrid", "own-1"],
        },
      ],
    });
  });

  test.each([
    ["commas", ",", "12.50"],
    ["semicolons and a decimal comma", ";", "12,50"],
    ["semicolons and a decimal point", ";", "12.50"],
    ["tabs and a decimal comma", "\t", "12,50"],
  ])("may be separated by %s", (_, separator, price) => {
    const text = [HEAD.split(","), [price, "EUR", "paid", "2026-05-31"]]
      .map((cells) => cells.join(separator))
      .join("\n");
    expect(read(text)).toMatchObject({ rows: [{ ...PLAIN, price: 12.5 }], faults: [] });
  });

  test.each([
    ["1.234,50", 1234.5],
    ["1,234.50", 1234.5],
    ["1 250", 1250],
    ["1250", 1250],
    ["0,125", 0.125],
  ])("with semicolons reads %s as people write it", (cell, price) => {
    expect(read(`${HEAD.replaceAll(",", ";")}\n${cell};EUR;paid;2026-05-31`).rows[0]?.price).toBe(price);
  });

  test("with semicolons does not guess whether 1.250 is a thousand and more", () => {
    const { rows, faults } = read(`${HEAD.replaceAll(",", ";")}\n1.250;EUR;paid;2026-05-31`);
    expect(rows).toEqual([]);
    expect(faults[0]).toMatchObject({ line: 2, column: "price", read: "1.250" });
    expect(faults[0]?.message).toMatch(/may be 1250 or 1\.25\./);
  });

  test("may begin with a byte order mark or a line that names the separator, end lines in any way, and hold empty lines", () => {
    const rows = [{ ...PLAIN }, { ...PLAIN, price: 80 }];
    const lines = [HEAD, "120,EUR,paid,2026-05-31", "", ",,,", "80,EUR,paid,2026-05-31", ""];
    for (const end of ["\n", "\r\n", "\r"]) {
      expect(read(`\ufeff${lines.join(end)}`)).toMatchObject({ rows, faults: [] });
    }
    const told = ["sep=;", HEAD.replaceAll(",", ";"), "120;EUR;paid;2026-05-31", "x;EUR;paid;2026-05-31"];
    const { rows: one, faults } = read(told.join("\r\n"));
    expect(one).toEqual([PLAIN]);
    expect(faults[0]?.line).toBe(4);
  });
});

// RFC 4180 section 2: rules 5 to 7 on quotation marks, rule 4 on the same number of fields in every line.
describe("quoted cells, by RFC 4180", () => {
  test("may hold separators, line breaks and doubled quotation marks", () => {
    const { rows, faults } = read(
      `${HEAD},name\r\n120,EUR,paid,2026-05-31,"Racer, ""the red\r\none"""\r\n0,EUR,paid,2026-05-31,\r\n`,
    );
    expect(rows[0]?.name).toBe('Racer, "the red one"');
    // The line break inside the cell counts: the faulty row stands on the fourth line of the file.
    expect(faults).toMatchObject([{ line: 4, column: "price" }]);
  });

  test("that never close are told by the line they open on, and the rows before them are kept", () => {
    const { rows, faults } = read(
      `${HEAD},name\n120,EUR,paid,2026-05-31,a\n80,EUR,paid,2026-05-31,"b\n70,EUR`,
    );
    expect(rows).toHaveLength(1);
    expect(faults).toMatchObject([{ line: 3, column: null }]);
    expect(faults[0]?.message).toMatch(/never closes/);
  });

  test("with a stray quotation mark are told", () => {
    const { rows, faults } = read(`${HEAD},name\n80,EUR,paid,2026-05-31,"b" c\n`);
    expect(rows).toEqual([]);
    expect(faults[0]).toMatchObject({ line: 2, column: null });
  });

  test.each([
    ["120,EUR,paid", /has 3 cells, the header 4.*keep their separators/],
    ["120,EUR,paid,2026-05-31,x", /has 5 cells, the header 4.*quotation marks/],
  ])("a row %s of another length than the header is told", (row, message) => {
    const { rows, faults, rejected } = read(`${HEAD}\n${row}\n`);
    expect(rows).toEqual([]);
    expect(faults[0]?.message).toMatch(message);
    expect(rejected).toHaveLength(1);
  });
});

describe("a fault of a row", () => {
  test.each([
    ["price", "0", /"0" is no price\. Write more than 0/],
    ["price", "-5", /no price/],
    ["price", "cheap", /"cheap" is no figure\. Write digits alone/],
    ["price", "1e3", /no figure/],
    ["price", "2000000000", /more than 1,000,000,000/],
    ["price", '"12,50"', /commas separate the cells of this file.*decimal point/],
    ["price", "", /This is empty/],
    ["currency", "", /This is empty/],
    ["currency", "GBP", /GBP is not EUR\. Convert the price/],
    ["currency", "\u20ac", /no currency code/],
    ["kind", "payed", /"payed" is not known\. The nearest is "paid"/i],
    ["date", "", /This is empty/],
    ["date", "31.5.2026", /no date\. Write year-month-day, as in 2026-06-15/],
    ["date", "2026-02-30", /no date/],
    ["date", "2026-06-16", /still to come \(today is 2026-06-15\)/],
    ["date", "0206-05-31", /before 1950/],
  ])("in %s, %s, is told with its remedy", (column, cell, message) => {
    const cells: Record<string, string> = { price: "120", currency: "EUR", kind: "paid", date: "2026-05-31" };
    cells[column] = cell;
    const { rows, faults, rejected } = read(
      `${HEAD}\n${Object.values(cells).join(",")}\n120,EUR,paid,2026-05-31`,
    );
    expect(rows).toEqual([PLAIN]);
    expect(faults).toMatchObject([{ line: 2, column, read: cell.replaceAll('"', "") }]);
    expect(faults[0]?.message).toMatch(message);
    expect(rejected.map(({ line }) => line)).toEqual([2]);
  });

  test.each([
    ["category", "hybird", /nearest is "hybrid"/],
    ["category", "electric (not covered)", /not known/],
    ["category", "qqqqqqqq", /Write one of: road-racing, .*, tandem\./],
    ["era", "90s", /nearest is "1990s"/],
    ["year", "85", /no year from 1880 to 2026/],
    ["year", "2027", /no year from 1880 to 2026/],
    ["material", "aluminum", /nearest is "aluminium"/],
    ["state", "rode", /nearest is "rides"/],
    ["condition", "1.2", /no figure from 0 to 1\. Write 0 \(needs listed work\), 0\.45/],
    ["originality", "-0.1", /no figure from 0 to 1/],
    ["desirability", "some", /no figure from 0 to 1/],
    ["name", "x".repeat(121), /121 letters long\. Write at most 120/],
  ])("in %s, %s, is told with its remedy", (column, cell, message) => {
    const { rows, faults } = withCell(column, cell);
    expect(rows).toEqual([]);
    expect(faults).toMatchObject([{ line: 2, column }]);
    expect(faults[0]?.message).toMatch(message);
  });

  test("several in one row are all told", () => {
    expect(read(`${HEAD}\nx,GBP,given,soon\n`).faults.map(({ column }) => column)).toEqual(HEAD.split(","));
  });

  test("era and year must agree", () => {
    const rows = (era: string, year: string) =>
      read(`${HEAD},era,year\n120,EUR,paid,2026-05-31,${era},${year}\n`);
    expect(rows("1980s", "1985").rows[0]).toMatchObject({ era: "1980s", year: 1985 });
    expect(rows("pre-1970", "1931").faults).toEqual([]);
    expect(rows("", "1969").rows[0]).toMatchObject({ year: 1969 });
    expect(rows("1980s", "1991").faults).toMatchObject([{ line: 2, column: "year", read: "1991" }]);
  });
});

describe("the header", () => {
  test.each([
    ["prise,currency,kind,date", "prise", /There is no column "prise"\. The nearest is "price"/],
    [`${HEAD},frame number`, "frame number", /There is no column "frame number"\. Remove it, or rename/],
    [`${HEAD},date`, "date", /stands here twice/],
    [`${HEAD},,name`, null, /Column 5 has no name/],
    ["price,kind,date", "currency", /column "currency" is missing/],
  ])("%s is refused by name, and nothing is read", (header, column, message) => {
    const { rows, faults } = read(`${header}\n120,EUR,paid,2026-05-31\n`);
    expect(rows).toEqual([]);
    const fault = faults.find((one) => one.column === column);
    expect(fault?.line).toBe(1);
    expect(fault?.message).toMatch(message);
  });

  test("of an empty file is missed", () => {
    for (const text of ["", "\ufeff", "\n\n", ",,\n"]) {
      expect(read(text)).toMatchObject({ rows: [], faults: [{ line: 1, message: "The file is empty." }] });
    }
    expect(read(HEAD)).toMatchObject({ rows: [], faults: [] });
  });
});

describe("rows that are left out", () => {
  test("say the same as an earlier one, by line", () => {
    const row = "120,EUR,paid,2026-05-31";
    const { rows, duplicates, faults } = read(
      `${HEAD}\n${row}\n80,EUR,paid,2026-05-31\n"120.0",eur,Paid,2026-05-31\n`,
    );
    expect(rows).toHaveLength(2);
    expect(duplicates).toEqual([{ line: 4, of: 2 }]);
    expect(faults).toEqual([]);
  });

  test("are a template's example, by its note; a note of one's own is passed over", () => {
    const { rows, examples } = read(
      `${HEAD},note\n1,EUR,paid,2026-05-31,${EXAMPLE}\n120,EUR,paid,2026-05-31,scratched\n`,
    );
    expect(rows).toEqual([PLAIN]);
    expect(examples).toBe(1);
  });

  test("stand beyond the five thousandth; 5,000 are read", () => {
    const rows = Array.from({ length: 5001 }, (_, i) => `${i + 1},EUR,paid,2026-05-31`);
    const reading = read([HEAD, ...rows].join("\n"));
    expect(reading.rows).toHaveLength(5000);
    expect(reading.faults).toMatchObject([{ line: 5002, column: null }]);
    expect(reading.faults[0]?.message).toMatch(/Only 5,000 rows/);
  });
});
