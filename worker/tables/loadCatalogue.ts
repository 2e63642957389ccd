import type { Catalogue } from "../engine/decision/catalogue.ts";
import { contentHash } from "./contentHash.ts";
import { crossChecks } from "./crossChecks.ts";
import { parseTables } from "./parsedTables.ts";
import type { RawTables } from "./rawTables.ts";

/**
 * Tables, parsed row by row and checked against one another, as the engine takes them. The version is a hash of their content: the same
 * for the same figures, whatever their layout, order of fields or fields left out.
 * @throws TableError naming file, row, field and requirement of the first breach
 */
export function loadCatalogue(raw: RawTables): Catalogue {
  const tables = parseTables(raw);
  for (const error of crossChecks(tables)) throw error;
  const { notPolishedPenalty, ...partsTable } = tables.partsValue;
  return {
    version: contentHash(JSON.stringify(tables)),
    inspection: {
      checks: tables.checks,
      priors: tables.priors,
      priorModifiers: tables.priorModifiers,
      acquittals: tables.acquittals,
      attributeDefaults: tables.attributeDefaults,
      tyreNames: tables.tyreMarkings,
      history: tables.history,
      symptoms: tables.remedies.filter(({ causes }) => causes.length > 0),
    },
    service: {
      steps: tables.steps,
      operations: tables.operations,
      remedies: tables.remedies,
      parts: tables.parts,
      tools: tables.tools,
    },
    value: { model: tables.valueModel, prior: tables.valuePrior, parts: partsTable, notPolishedPenalty },
    selling: tables.selling,
    cautions: tables.cautions,
    defaults: tables.defaults,
  };
}
