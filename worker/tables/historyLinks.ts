import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Loadings of a check that has others, or that asks for papers: what happened to a bike is not read from its papers, nor they from it. */
export function* historyGaps({ checks, history }: ParsedTables): Generator<TableError> {
  const papers = new Set(checks.filter(({ group }) => group === "paperwork").map(({ id }) => id));
  const seen = new Set<string>();
  for (const [at, { check }] of history.loadings.entries()) {
    const field = `loadings[${at}].check`;
    if (seen.has(check))
      yield new TableError(FILES.history, null, field, `one row for ${check}, got a second`);
    if (papers.has(check))
      yield new TableError(FILES.history, null, field, `a check of the bike itself, got ${check}`);
    seen.add(check);
  }
}
