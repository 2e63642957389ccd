import { type Attributes, type Condition, holds } from "../engine/bicycle.ts";
import type { Check, Level } from "../engine/inspection/check.ts";
import type { Operation, Remedy } from "../engine/service/operation.ts";
import { bikesToldApart } from "./bikesToldApart.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/**
 * Remedies that leave a bike in doubt. On every bike that a level concerns at most one row holds; where the level blocks riding and
 * does not end the job, exactly one does (an empty one says that nothing cures it); a row with options has one that the bike allows.
 */
export function* cureGaps(tables: ParsedTables): Generator<TableError> {
  const operations = new Map(tables.operations.map((operation) => [operation.id, operation]));
  const byLevel = remediesByLevel(tables.remedies);
  for (const check of tables.checks) {
    for (const level of check.levels) {
      const rows = byLevel.get(`${check.id}:${level.id}`) ?? [];
      yield* gapsOfLevel(check, level, rows, operations);
    }
  }
}

/** A remedy with its place in the table. */
interface Row {
  readonly at: number;
  readonly remedy: Remedy;
}

function remediesByLevel(remedies: readonly Remedy[]): ReadonlyMap<string, readonly Row[]> {
  const byLevel = new Map<string, Row[]>();
  for (const [at, remedy] of remedies.entries()) {
    const key = `${remedy.check}:${remedy.level}`;
    byLevel.set(key, [...(byLevel.get(key) ?? []), { at, remedy }]);
  }
  return byLevel;
}

function* gapsOfLevel(
  check: Check,
  level: Level,
  rows: readonly Row[],
  operations: ReadonlyMap<string, Operation>,
): Generator<TableError> {
  const blocking = (bike: Attributes) => safetyOn(check, level, bike) === "block" && level.terminal === null;
  const conditions = [
    ...check.appliesTo,
    ...check.adjustments.filter((row) => row.level === level.id).flatMap(({ when }) => when),
    ...rows.flatMap(({ remedy }) => [...remedy.when, ...conditionsOfOptions(remedy, operations)]),
  ];
  for (const bike of bikesToldApart(conditions)) {
    if (!holds(check.appliesTo, bike)) continue;
    const [row, second] = rows.filter(({ remedy }) => holds(remedy.when, bike));
    if (second) {
      const requirement = `no bike in common with row ${row!.at}, got ${told(bike, conditions)}`;
      yield new TableError(FILES.remedies, second.at, "when", requirement);
      return;
    }
    if (!row && blocking(bike)) {
      const requirement = `a cure, an empty remedy or an end of the job for ${level.id} on ${told(bike, conditions)}`;
      yield new TableError(FILES.checks, check.id, "levels", requirement);
      return;
    }
    if (row && row.remedy.options.length > 0 && !hasAllowedOption(row.remedy, bike, operations)) {
      const requirement = `an option that the bike allows, got none on ${told(bike, conditions)}`;
      yield new TableError(FILES.remedies, row.at, "options", requirement);
      return;
    }
  }
}

/** After the adjustments for this bike. */
function safetyOn(check: Check, level: Level, bike: Attributes): Level["safety"] {
  const adjusted = check.adjustments.find((row) => row.level === level.id && holds(row.when, bike));
  return adjusted?.safety ?? level.safety;
}

function conditionsOfOptions(
  remedy: Remedy,
  operations: ReadonlyMap<string, Operation>,
): readonly Condition[] {
  return remedy.options.flat().flatMap((id) => {
    const { onlyIf, notOnMaterials } = operations.get(id)!;
    return [...onlyIf, { attribute: "frameMaterial", isOneOf: notOnMaterials } as const];
  });
}

function hasAllowedOption(
  { options }: Remedy,
  bike: Attributes,
  operations: ReadonlyMap<string, Operation>,
): boolean {
  return options.some((option) => option.every((id) => isAllowed(operations.get(id)!, bike)));
}

/** Whether the bike lets an operation be done at all. */
export function isAllowed({ onlyIf, notOnMaterials }: Operation, bike: Attributes): boolean {
  return holds(onlyIf, bike) && !notOnMaterials.includes(bike.frameMaterial);
}

/** The bike in the words that the conditions use. */
function told(bike: Attributes, conditions: readonly Condition[]): string {
  const names = [...new Set(conditions.map(({ attribute }) => attribute))];
  return names.length === 0 ? "any bike" : names.map((name) => `${name} ${bike[name]}`).join(", ");
}
