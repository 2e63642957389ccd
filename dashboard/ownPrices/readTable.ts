import { grouped } from "../words/figure.ts";
import type { Terms } from "./cells.ts";
import { type Column, EXAMPLE, NOTE } from "./columns.ts";
import { headerOf } from "./header.ts";
import { plainKey } from "./nearest.ts";
import type { Duplicate, Fault, Reading } from "./reading.ts";
import { type FileRecord, recordsIn } from "./records.ts";
import { readRow } from "./row.ts";
import { rowKey } from "./rowKey.ts";

/** How the rows of one kind of file are read. */
export interface Table<Row> {
  readonly columns: readonly Column<Row>[];
  /** What one row needs that no cell shows alone: the column at fault and why; null where nothing is wrong. */
  readonly check: (row: Row) => { readonly column: string; readonly message: string } | null;
  /** The most rows that are kept. */
  readonly most: number;
}

/**
 * Reads a file row by row. A fault in the header refuses the whole file, since nobody knows what its cells mean; a
 * fault in a row refuses that row alone.
 */
export function readTable<Row>(
  text: string,
  { columns, check, most }: Table<Row>,
  terms: Omit<Terms, "commaSeparates">,
): Reading<Row> {
  const { separator, records } = recordsIn(text);
  const [first, ...rest] = records;
  if (first === undefined)
    return refused([{ line: 1, column: null, read: "", message: "The file is empty." }]);
  const header = headerOf(first, columns);
  const broken = first.broken === null ? [] : [fault(first, first.broken)];
  if (header.faults.length + broken.length > 0) return refused([...header.faults, ...broken]);

  const note = first.cells.findIndex((cell) => plainKey(cell) === NOTE);
  const lines = new Map<string, number>();
  const rows: Row[] = [];
  const faults: Fault[] = [];
  const duplicates: Duplicate[] = [];
  const rejected: FileRecord[] = [];
  let examples = 0;
  for (const record of rest) {
    if (note >= 0 && record.cells[note] === EXAMPLE) {
      examples += 1;
      continue;
    }
    const read = readRow(record, header.places, { ...terms, commaSeparates: separator === "," }, check);
    if ("faults" in read) {
      faults.push(...read.faults);
      rejected.push(record);
      continue;
    }
    const key = rowKey(read.row as object);
    const of = lines.get(key);
    if (of !== undefined) duplicates.push({ line: record.line, of });
    else if (rows.length === most) {
      faults.push(fault(record, `Only ${grouped(most)} rows are kept. Remove older ones.`));
      rejected.push(record);
    } else {
      lines.set(key, record.line);
      rows.push(read.row);
    }
  }
  return { rows, faults, duplicates, examples, rejected, header: first.cells };
}

function fault(record: FileRecord, message: string): Fault {
  return { line: record.line, column: null, read: record.cells.join(" "), message };
}

function refused<Row>(faults: readonly Fault[]): Reading<Row> {
  return { rows: [], faults, duplicates: [], examples: 0, rejected: [], header: [] };
}
