import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

const STANDARD = /\b(ISO|EN|IEC|DIN|BS|ANSI|ASTM|JIS)\b[ -]?[A-Z]?\d/;

/** Limits that claim a standard and name none. */
export function* unnamedStandards({ checks }: ParsedTables): Generator<TableError> {
  for (const { id, limitSource } of checks) {
    if (limitSource.kind === "standard" && !STANDARD.test(limitSource.text)) {
      yield new TableError(
        FILES.checks,
        id,
        "limitSource.text",
        "the name of the standard it cites (ISO 4210)",
      );
    }
  }
}
