import { describe, expect, test } from "vitest";
import { fileKind, readPriceBook } from "../../../dashboard/ownPrices/files.ts";
import { TODAY, VOCABULARY } from "./vocabulary.ts";

const read = (text: string) => readPriceBook(text, VOCABULARY, TODAY, "EUR");

describe("a price book", () => {
  test("names parts by id or by the catalogue's name", () => {
    expect(read('part,price,currency\nchain,9.5,EUR\n"Tyre, everyday bead diameter",14,EUR\n')).toMatchObject(
      {
        rows: [
          { part: "chain", price: 9.5, currency: "EUR" },
          { part: "tyre", price: 14, currency: "EUR" },
        ],
        faults: [],
      },
    );
  });

  test.each([
    ["chian,9,EUR", "part", /nearest is "chain"/i],
    ["chain,0,EUR", "price", /no price/],
    ["chain,9,USD", "currency", /USD is not EUR/],
  ])("refuses %s", (row, column, message) => {
    const { rows, faults } = read(`part,price,currency\n${row}\n`);
    expect(rows).toEqual([]);
    expect(faults).toMatchObject([{ line: 2, column }]);
    expect(faults[0]?.message).toMatch(message);
  });

  test("holds one price for a part: the same twice is noticed, another is refused", () => {
    const { rows, faults, duplicates } = read(
      "part,price,currency\nchain,9,EUR\nChain,9,EUR\nchain,11,EUR\n",
    );
    expect(rows).toHaveLength(1);
    expect(duplicates).toEqual([{ line: 3, of: 2 }]);
    expect(faults).toMatchObject([{ line: 4, column: "part" }]);
    expect(faults[0]?.message).toMatch(/chain already has the price 9 above/);
  });

  test("is told from sales by its header", () => {
    expect(fileKind("\ufeffcurrency;Part;price\n")).toBe("price-book");
    expect(fileKind("price,currency,kind,date\n")).toBe("sales");
    expect(fileKind("")).toBe("sales");
  });
});
