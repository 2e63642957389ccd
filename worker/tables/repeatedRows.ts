import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Rows that say who they are twice: an id of its own in most tables. */
export function* repeatedRows(tables: ParsedTables): Generator<TableError> {
  for (const name of ["checks", "steps", "operations", "parts", "tools", "cautions"] as const) {
    const seen = new Set<string>();
    for (const { id } of tables[name]) {
      if (seen.has(id)) yield new TableError(FILES[name], id, "id", `an id of its own, got ${id} twice`);
      seen.add(id);
    }
  }
}
