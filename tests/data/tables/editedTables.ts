import type { RawTables } from "../../../worker/tables/rawTables.ts";
import { SHIPPED_TABLES } from "../../../worker/tables.ts";

type Node = Record<string | number, unknown>;

/** A change of one place in one row: a value instead of what stands there, or undefined to take it out. */
export interface Edit {
  readonly table: keyof RawTables;
  /** The row's id or index; null where the file is one object. */
  readonly row: string | number | null;
  readonly path: readonly (string | number)[];
  readonly value: unknown;
}

/** A copy of the shipped tables with one place changed. */
export function editedTables({ table, row, path, value }: Edit): RawTables {
  const tables = structuredClone(SHIPPED_TABLES);
  let node = rowOf(tables[table], row);
  for (const key of path.slice(0, -1)) node = node[key] as Node;
  const last = path.at(-1)!;
  if (value === undefined) delete node[last];
  else node[last] = value;
  return tables;
}

/** A copy of the shipped tables with the rows of one table filtered or added to. */
export function tablesWithRows(table: keyof RawTables, change: (rows: Node[]) => Node[]): RawTables {
  return { ...SHIPPED_TABLES, [table]: change(structuredClone(SHIPPED_TABLES[table]) as Node[]) };
}

/** Index of the first row that holds these fields. */
export function indexOfRow(table: keyof RawTables, fields: Readonly<Record<string, unknown>>): number {
  const rows = SHIPPED_TABLES[table] as Node[];
  const index = rows.findIndex((row) => Object.entries(fields).every(([name, value]) => row[name] === value));
  if (index < 0) throw new Error(`no row of ${table} with ${JSON.stringify(fields)}`);
  return index;
}

function rowOf(table: unknown, row: string | number | null): Node {
  if (row === null) return table as Node;
  const rows = table as Node[];
  const found = typeof row === "number" ? rows[row] : rows.find(({ id }) => id === row);
  if (!found) throw new Error(`no row ${row}`);
  return found;
}
