import type { Column } from "./columns.ts";
import { EXAMPLE, NOTE, priceBookColumns, saleColumns } from "./columns.ts";
import { plainKey } from "./nearest.ts";
import type { Reading } from "./reading.ts";
import { readTable } from "./readTable.ts";
import { csvOf, guarded, recordsIn } from "./records.ts";
import type { PartPrice, Sale } from "./sale.ts";
import { priceBookTable, salesTable } from "./tables.ts";
import type { Vocabulary } from "./vocabulary.ts";

/**
 * Reads a file of sales.
 * @param today ISO 8601; a sale after it is refused
 * @param currency ISO 4217; a row in another is refused
 */
export function readSales(
  text: string,
  vocabulary: Vocabulary,
  today: string,
  currency: string,
): Reading<Sale> {
  return readTable(text, salesTable(vocabulary), { today, currency });
}

/** Reads a price book: `part, price, currency`. */
export function readPriceBook(
  text: string,
  vocabulary: Vocabulary,
  today: string,
  currency: string,
): Reading<PartPrice> {
  return readTable(text, priceBookTable(vocabulary), { today, currency });
}

/** Which kind of file a text is, by its header: only a price book has a column "part". */
export function fileKind(text: string): "sales" | "price-book" {
  const header = recordsIn(text).records[0]?.cells ?? [];
  return header.some((cell) => plainKey(cell) === "part") ? "price-book" : "sales";
}

/** Sales as a file that `readSales` reads back. */
export function salesToCsv(sales: readonly Sale[], vocabulary: Vocabulary): string {
  return fileOf(saleColumns(vocabulary), sales);
}

/** A price book as a file that `readPriceBook` reads back. */
export function priceBookToCsv(prices: readonly PartPrice[], vocabulary: Vocabulary): string {
  return fileOf(priceBookColumns(vocabulary), prices);
}

/** A file of sales with one row that is marked as invented. */
export function salesTemplate(vocabulary: Vocabulary, currency: string): string {
  const example: Sale = {
    price: 120.5,
    currency,
    kind: "paid",
    date: "2026-03-14",
    name: "Green hybrid, invented",
    category: "hybrid",
    era: "2010s",
    frameMaterial: "aluminium",
    componentTier: "mid",
    sizeClass: "middle",
    place: "city",
    drivetrain: "derailleur",
    stepThrough: "no",
    state: "rides",
    condition: 0.75,
    originality: 0.8,
    desirability: 0,
  };
  return fileOf(saleColumns(vocabulary), [example], EXAMPLE);
}

/** A price book with one row that is marked as invented. */
export function priceBookTemplate(vocabulary: Vocabulary, currency: string): string {
  const part = vocabulary.parts[0]?.id ?? "";
  return fileOf(priceBookColumns(vocabulary), [{ part, price: 12.5, currency }], EXAMPLE);
}

/** The rows at fault as a file to mend and read again, with what is wrong in the column "note". */
export function rejectedRows<Row>({ header, rejected, faults }: Reading<Row>): string {
  const kept = header.map((name, i) => ({ name, i })).filter(({ name }) => plainKey(name) !== NOTE);
  const rows = rejected.map(({ line, cells }) => {
    const said = faults.filter((fault) => fault.line === line);
    const note = said.map(({ column, message }) => (column === null ? message : `${column}: ${message}`));
    // Cells beyond the header have no name to stand under: they go where they can be read.
    const beyond = cells.slice(header.length).join(" ");
    return [...kept.map(({ i }) => cells[i] ?? ""), [...note, beyond].join(" ").trim()].map(guarded);
  });
  return csvOf([[...kept.map(({ name }) => name), NOTE], ...rows]);
}

function fileOf<Row>(columns: readonly Column<Row>[], rows: readonly Row[], note?: string): string {
  const end = note === undefined ? [] : [note];
  const cells = rows.map((row) => [...columns.map(({ field }) => guarded(cellOf(row[field]))), ...end]);
  return csvOf([[...columns.map(({ name }) => name), ...(note === undefined ? [] : [NOTE])], ...cells]);
}

function cellOf(value: unknown): string {
  if (value === undefined) return "";
  // Never with an exponent, which no reader of figures takes.
  if (typeof value === "number")
    return value.toLocaleString("en", { useGrouping: false, maximumFractionDigits: 20 });
  return Array.isArray(value) ? value.join(" ") : String(value);
}
