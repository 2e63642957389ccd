import * as z from "zod";
import { cautionRow } from "./cautionSchemas.ts";
import { defaultsTable } from "./defaultsSchema.ts";
import { evidenceRules } from "./evidenceRuleSchema.ts";
import { historyTable } from "./historySchema.ts";
import {
  acquittalRow,
  attributeDefaultRow,
  checkRow,
  priorModifierRow,
  priorRow,
} from "./inspectionSchemas.ts";
import { partRow, toolRow } from "./partSchemas.ts";
import { FILES, type RawTables } from "./rawTables.ts";
import { sellingTables } from "./sellingSchema.ts";
import { operationRow, remedyRow, stepRow } from "./serviceSchemas.ts";
import { TableError } from "./tableError.ts";
import { tyreMarkingRow } from "./tyreMarkingSchema.ts";
import { valuePrior } from "./valuePriorSchema.ts";
import { partsValueTable, valueModel } from "./valueSchemas.ts";

const SCHEMAS = {
  checks: z.array(checkRow),
  priors: z.array(priorRow),
  priorModifiers: z.array(priorModifierRow),
  acquittals: z.array(acquittalRow),
  history: historyTable,
  evidenceRules,
  attributeDefaults: z.array(attributeDefaultRow),
  tyreMarkings: z.array(tyreMarkingRow),
  steps: z.array(stepRow),
  operations: z.array(operationRow),
  remedies: z.array(remedyRow),
  parts: z.array(partRow),
  tools: z.array(toolRow),
  cautions: z.array(cautionRow),
  defaults: defaultsTable,
  partsValue: partsValueTable,
  valueModel,
  valuePrior,
  selling: sellingTables,
} satisfies Record<keyof RawTables, z.ZodType>;

/** The tables with every field of the right type and what was left out filled in; what they say of one another is not checked yet. */
export type ParsedTables = { readonly [K in keyof RawTables]: z.output<(typeof SCHEMAS)[K]> };

/**
 * Every table through its schema.
 * @throws TableError naming the file, the row and the field of the first breach
 */
export function parseTables(raw: RawTables): ParsedTables {
  const names = Object.keys(SCHEMAS) as (keyof RawTables)[];
  return Object.fromEntries(names.map((name) => [name, parseTable(name, raw[name])])) as ParsedTables;
}

function parseTable(name: keyof RawTables, raw: unknown): unknown {
  const result = SCHEMAS[name].safeParse(raw);
  if (result.success) return result.data;
  const { path, message } = result.error.issues[0]!;
  const [first, ...inside] = path;
  if (typeof first !== "number") throw new TableError(FILES[name], null, fieldName(path), message);
  throw new TableError(FILES[name], rowName(raw, first), fieldName(inside), message);
}

/** A row's own id, or its index where it has none. */
function rowName(raw: unknown, index: number): string | number {
  const row: unknown = Array.isArray(raw) ? raw[index] : undefined;
  if (typeof row === "object" && row !== null && "id" in row && typeof row.id === "string") return row.id;
  return index;
}

/** A path as it is written in code: uses[0].part. */
function fieldName(path: readonly PropertyKey[]): string {
  if (path.length === 0) return "it";
  return path
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${String(key)}`))
    .join("")
    .replace(/^\./, "");
}
