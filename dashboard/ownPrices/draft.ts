import { readCells } from "./row.ts";
import type { Sale } from "./sale.ts";
import { salesTable } from "./tables.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What stands in the fields of the form, as text, by field of a sale; empty or absent is unknown. */
export type Draft = Readonly<Partial<Record<string, string>>>;

/** A form with nothing in it but a day. */
export function emptyDraft(day: string): Draft {
  return { date: day };
}

/** The sale that a form describes, read like a row of a file; or what is wrong, by field. */
export function saleOf(
  draft: Draft,
  vocabulary: Vocabulary,
  today: string,
  currency: string,
): { readonly sale: Sale } | { readonly wrong: Readonly<Record<string, string>> } {
  const table = salesTable(vocabulary);
  const cells = table.columns.map((column) => ({
    column,
    cell: column.field === "currency" ? currency : (draft[column.field] ?? "").trim(),
  }));
  // The fields give figures with a decimal point.
  const read = readCells(cells, { today, currency, commaSeparates: true }, table.check);
  if ("row" in read) return { sale: read.row };
  const fields = new Map(table.columns.map(({ name, field }) => [name, field as string]));
  return {
    wrong: Object.fromEntries(
      read.wrong.map(({ column, read: cell, message }) => [
        fields.get(column ?? "") ?? "",
        cell === "" ? "Fill this in." : message,
      ]),
    ),
  };
}
