import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { NOTE, priceBookColumns, saleColumns } from "../../../dashboard/ownPrices/columns.ts";
import { nearest, plainKey } from "../../../dashboard/ownPrices/nearest.ts";
import { CHOICE_FIELDS } from "../../../dashboard/ownPrices/vocabulary.ts";
import { VOCABULARY } from "./vocabulary.ts";

const README = readFileSync(new URL("../../../data/README.md", import.meta.url), "utf8");
const [, written = ""] = README.split("## Files of your own");

/** The columns that a table of the README names, in its first cells. */
function named(table: string): string[] {
  const rows = written.split(`| ${table} `)[1]?.split("\n\n")[0]?.split("\n").slice(2) ?? [];
  return rows.flatMap((row) =>
    [...(row.split("|")[1] ?? "").matchAll(/`([^`]+)`/g)].map(([, name]) => name!),
  );
}

describe("the columns", () => {
  test("are those that data/README.md names", () => {
    const names = (columns: readonly { name: string }[]) => [...columns.map(({ name }) => name), NOTE].sort();
    expect(named("sales").sort()).toEqual(names(saleColumns(VOCABULARY)));
    expect(named("price book").sort()).toEqual(names(priceBookColumns(VOCABULARY)));
  });

  test("are told apart however they are written, and each fills a field of its own", () => {
    for (const columns of [saleColumns(VOCABULARY), priceBookColumns(VOCABULARY)]) {
      expect(new Set(columns.map(({ name }) => plainKey(name))).size).toBe(columns.length);
      expect(new Set<string>(columns.map(({ field }) => field)).size).toBe(columns.length);
    }
    const fields: readonly string[] = saleColumns(VOCABULARY).map(({ field }) => field);
    for (const field of CHOICE_FIELDS) expect(fields).toContain(field);
  });

  test("read every word they offer, by value and by label", () => {
    const terms = { currency: "EUR", today: "2026-06-15", commaSeparates: true };
    const columns = saleColumns(VOCABULARY);
    for (const field of CHOICE_FIELDS) {
      const column = columns.find((one) => one.field === field)!;
      for (const { value, label } of VOCABULARY.choices[field]) {
        expect(column.read(value, terms)).toEqual({ value });
        expect(column.read(label.toUpperCase(), terms)).toEqual({ value });
      }
    }
  });
});

describe("the nearest word", () => {
  test.each([
    ["catgory", "category"],
    ["Step  Through", "step-through"],
    ["part name", null],
    ["", null],
  ])("to %s is %s", (word, near) => {
    expect(nearest(word, ["category", "step-through", "price"])).toBe(near);
  });

  // Wagner and Fischer's distance of "kitten" and "sitting" is 3, the textbook example of it.
  test("is as near as the edit distance says", () => {
    expect(nearest("kitten", ["sitting"])).toBeNull();
    expect(nearest("kittens and", ["sitting and"])).toBe("sitting and");
    expect(nearest("sitten", ["kitten", "mittens", "bitter"])).toBe("kitten");
  });
});
