import { parseTables } from "../../worker/tables/parsedTables.ts";
import { readCatalogue, SHIPPED_TABLES } from "../../worker/tables.ts";
import { historyFits } from "./fitHistory.ts";
import { historyReport } from "./historyReport.ts";

/** The generated report on the hidden history by name, relative to data/. */
export function historyFiles(): ReadonlyMap<string, string> {
  const { evidenceRules } = parseTables(SHIPPED_TABLES);
  const fits = historyFits(readCatalogue().inspection, evidenceRules);
  return new Map([["history-fit.md", historyReport(fits, evidenceRules)]]);
}
