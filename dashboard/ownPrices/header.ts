import { quoted } from "./cells.ts";
import { type Column, NOTE } from "./columns.ts";
import { nearest, plainKey } from "./nearest.ts";
import type { Fault } from "./reading.ts";
import type { FileRecord } from "./records.ts";

/** Where each cell of a row goes: a column, or null for a remark. */
export interface Header<Row> {
  readonly places: readonly (Column<Row> | null)[];
  readonly faults: readonly Fault[];
}

/** Reads the header of a file: any order of columns, none unknown, none twice, none missing that every row needs. */
export function headerOf<Row>(record: FileRecord, columns: readonly Column<Row>[]): Header<Row> {
  const byKey = new Map(columns.map((column) => [plainKey(column.name), column]));
  const faults: Fault[] = [];
  const say = (column: string | null, read: string, message: string) =>
    faults.push({ line: record.line, column, read, message });
  const seen = new Set<string>();
  const places = record.cells.map((cell, i) => {
    const key = plainKey(cell);
    const column = byKey.get(key) ?? null;
    if (seen.has(key)) say(cell, cell, `The column ${quoted(cell)} stands here twice. Keep one.`);
    else if (cell === "") say(null, "", `Column ${i + 1} has no name. Name it or remove it.`);
    else if (column === null && key !== NOTE) say(cell, cell, unknownColumn(cell, columns));
    seen.add(key);
    return column;
  });
  for (const column of columns) {
    if (column.needed && !places.includes(column)) {
      say(column.name, "", `The column "${column.name}" is missing. Add it: every row needs it.`);
    }
  }
  return { places, faults };
}

function unknownColumn<Row>(cell: string, columns: readonly Column<Row>[]): string {
  const names = [...columns.map(({ name }) => name), NOTE];
  const near = nearest(cell, names);
  if (near !== null)
    return `There is no column ${quoted(cell)}. The nearest is "${near}": rename or remove it.`;
  return `There is no column ${quoted(cell)}. Remove it, or rename it to one of: ${names.join(", ")}.`;
}
