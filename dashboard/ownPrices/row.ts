import type { Terms } from "./cells.ts";
import type { Column } from "./columns.ts";
import type { Fault } from "./reading.ts";
import type { Table } from "./readTable.ts";
import type { FileRecord } from "./records.ts";

/** A row of a file, or everything that is wrong with it. An empty cell is unknown, and its field is left out. */
export function readRow<Row>(
  record: FileRecord,
  places: readonly (Column<Row> | null)[],
  terms: Terms,
  check: Table<Row>["check"],
): { readonly row: Row } | { readonly faults: readonly Fault[] } {
  const { line, cells, broken } = record;
  const read = cells.join(" ");
  if (broken !== null) return { faults: [{ line, column: null, read, message: broken }] };
  if (cells.length !== places.length) {
    return { faults: [{ line, column: null, read, message: wrongLength(cells.length, places.length) }] };
  }
  const named = places.flatMap((column, i) => (column === null ? [] : [{ column, cell: cells[i] ?? "" }]));
  const result = readCells(named, terms, check);
  if ("row" in result) return result;
  return { faults: result.wrong.map((one) => ({ line, ...one })) };
}

/** Reads cells by their columns; also what a form on the page is read with. */
export function readCells<Row>(
  cells: readonly { readonly column: Column<Row>; readonly cell: string }[],
  terms: Terms,
  check: Table<Row>["check"],
): { readonly row: Row } | { readonly wrong: readonly Omit<Fault, "line">[] } {
  const row: Record<string, unknown> = {};
  const wrong: Omit<Fault, "line">[] = [];
  for (const { column, cell } of cells) {
    if (cell === "") {
      if (column.needed)
        wrong.push({ column: column.name, read: "", message: "This is empty. Every row needs it." });
      continue;
    }
    const read = column.read(cell, terms);
    if ("wrong" in read) wrong.push({ column: column.name, read: cell, message: read.wrong });
    else row[column.field] = read.value;
  }
  if (wrong.length > 0) return { wrong };
  // Every needed column was read and every reader gives its field's type.
  const whole = row as Row;
  const odd = check(whole);
  if (odd === null) return { row: whole };
  const read = cells.find(({ column }) => column.name === odd.column)?.cell ?? "";
  return { wrong: [{ ...odd, read }] };
}

function wrongLength(has: number, wants: number): string {
  const many =
    has > wants
      ? "A cell that holds a separator must stand in quotation marks."
      : "Leave unknown cells empty, but keep their separators.";
  return `This row has ${has} ${has === 1 ? "cell" : "cells"}, the header ${wants}. ${many}`;
}
