import { ATTRIBUTE_VALUES } from "../engine/bicycle.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Checks without exactly one prior for each era and each way of being kept, or with a prior that has not one chance for each level. */
export function* priorGaps({ checks, priors }: ParsedTables): Generator<TableError> {
  const levels = new Map(checks.map(({ id, levels }) => [id, levels.length]));
  const seen = new Set<string>();
  for (const [at, { check, era, kept, probabilities }] of priors.entries()) {
    const key = `${check} ${era} ${kept}`;
    if (seen.has(key)) yield new TableError(FILES.priors, at, "check", `one row for ${key}, got a second`);
    seen.add(key);
    const expected = levels.get(check);
    if (probabilities.length !== expected) {
      const requirement = `a chance for each of the ${expected} levels of ${check}, got ${probabilities.length}`;
      yield new TableError(FILES.priors, at, "probabilities", requirement);
    }
  }
  for (const { id } of checks) {
    for (const era of ATTRIBUTE_VALUES.era) {
      for (const kept of ATTRIBUTE_VALUES.kept) {
        const key = `${id} ${era} ${kept}`;
        if (!seen.has(key)) yield new TableError(FILES.priors, key, "check", `a row for ${key}`);
      }
    }
  }
}
