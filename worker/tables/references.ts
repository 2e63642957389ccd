import type { CautionClause } from "../engine/decision/caution.ts";
import type { LevelMatch, Operation, PartUse, Step } from "../engine/service/operation.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

type Kind = "check" | "level" | "operation" | "step" | "part" | "tool";

/** A name in one row for something that stands in another. */
interface Reference {
  readonly field: string;
  readonly kind: Kind;
  readonly id: string;
}

interface RowReferences {
  readonly file: string;
  readonly row: string | number | null;
  readonly references: Iterable<Reference>;
}

/** Names of checks, levels, operations, steps, parts and tools that stand nowhere. */
export function* unknownNames(tables: ParsedTables): Generator<TableError> {
  const known = knownNames(tables);
  for (const { file, row, references } of rowsWithReferences(tables)) {
    for (const { field, kind, id } of references) {
      if (!known[kind].has(id)) yield new TableError(file, row, field, `a known ${kind}, got ${id}`);
    }
  }
}

function knownNames(tables: ParsedTables): Readonly<Record<Kind, ReadonlySet<string>>> {
  const ids = (rows: readonly { readonly id: string }[]) => new Set(rows.map(({ id }) => id));
  return {
    check: ids(tables.checks),
    level: new Set(tables.checks.flatMap(({ id, levels }) => levels.map((level) => `${id}:${level.id}`))),
    operation: ids(tables.operations),
    step: ids(tables.steps),
    part: ids(tables.parts),
    tool: ids(tables.tools),
  };
}

function* rowsWithReferences(tables: ParsedTables): Generator<RowReferences> {
  for (const row of tables.steps) yield { file: FILES.steps, row: row.id, references: ofStep(row) };
  for (const row of tables.operations)
    yield { file: FILES.operations, row: row.id, references: ofOperation(row) };
  for (const row of tables.parts) {
    const references = (row.sizes ?? []).flatMap(({ check }, n): Reference[] =>
      check === undefined ? [] : [{ field: `sizes[${n}].check`, kind: "check", id: check }],
    );
    yield { file: FILES.parts, row: row.id, references };
  }
  for (const [at, row] of tables.remedies.entries()) {
    const references = [
      ...ofMatch("level", { check: row.check, levels: [row.level] }),
      ...row.options.flatMap((option, n) => named(`options[${n}]`, "operation", option)),
      ...ofMatches("causes", row.causes),
    ];
    yield { file: FILES.remedies, row: at, references };
  }
  for (const [at, row] of tables.priors.entries()) {
    yield { file: FILES.priors, row: at, references: [{ field: "check", kind: "check", id: row.check }] };
  }
  for (const [at, row] of tables.priorModifiers.entries()) {
    const references = ofMatch("fromLevel", { check: row.check, levels: [row.fromLevel] });
    yield { file: FILES.priorModifiers, row: at, references };
  }
  for (const [at, row] of tables.acquittals.entries()) {
    const finding =
      row.check === null || row.level === null ? [] : [{ check: row.check, levels: [row.level] }];
    const references = [...ofMatches("level", finding), ...named("acquits", "check", row.acquits)];
    yield { file: FILES.acquittals, row: at, references };
  }
  const loaded = tables.history.loadings.map(({ check }) => check);
  yield { file: FILES.history, row: null, references: named("loadings", "check", loaded) };
  const ruled = tables.evidenceRules.rules.flatMap(({ seen, unseen }, n) => [
    ...ofMatch(`rules[${n}].seen`, { check: seen.check, levels: [seen.atLeast ?? seen.atMost!] }),
    ...ofMatch(`rules[${n}].unseen`, { check: unseen.check, levels: [unseen.atLeast] }),
  ]);
  yield { file: FILES.evidenceRules, row: null, references: ruled };
  for (const row of tables.cautions) {
    const references = row.clauses.flatMap((clause, n) => [...ofClause(`clauses[${n}]`, clause)]);
    yield { file: FILES.cautions, row: row.id, references };
  }
  for (const [completeness, parts] of Object.entries(tables.defaults.missingParts)) {
    yield {
      file: FILES.defaults,
      row: null,
      references: named(`missingParts.${completeness}`, "part", parts),
    };
  }
  const { spoiled, pieces } = tables.partsValue;
  const references = [
    ...ofMatches("spoiled", spoiled),
    ...ofMatches("pieces.crash.signs", pieces.crash.signs),
    ...pieces.others.flatMap(({ kinds }, n) =>
      kinds.flatMap(({ parts }, m) => named(`pieces.others[${n}].kinds[${m}].parts`, "part", parts)),
    ),
  ];
  yield { file: FILES.partsValue, row: null, references };
}

function* ofStep(row: Step): Generator<Reference> {
  yield* named("implies", "step", row.implies);
  yield* named("entails", "operation", row.entails);
  if (row.blockedBy) yield* ofMatch("blockedBy", row.blockedBy);
}

function* ofOperation(row: Operation): Generator<Reference> {
  yield* named("tools", "tool", row.tools);
  yield* named("after", "operation", row.after);
  yield* named("afterAllExcept", "operation", row.afterAllExcept ?? []);
  yield* named("steps", "step", row.steps);
  yield* ofUses("uses", row.uses);
  yield* named("entails", "operation", row.entails);
  for (const [n, variant] of row.variants.entries()) {
    yield* ofMatch(`variants[${n}].at`, variant.at);
    yield* named(`variants[${n}].steps`, "step", variant.steps ?? []);
    yield* ofUses(`variants[${n}].uses`, variant.uses ?? []);
  }
  for (const [n, { check, atLeast }] of row.reveals.entries()) {
    yield* ofMatch(`reveals[${n}]`, { check, levels: [atLeast] });
  }
  for (const [n, { at }] of row.failure?.chances.entries() ?? [])
    yield* ofMatches(`failure.chances[${n}].at`, at);
  for (const [n, list] of row.failure?.thenOneOf.entries() ?? []) {
    yield* named(`failure.thenOneOf[${n}]`, "operation", list);
  }
  for (const [n, test] of row.tests.entries()) {
    yield* ofMatch(`tests[${n}]`, { check: test.of, levels: [...test.at, test.good, test.bad] });
  }
}

function* ofUses(field: string, uses: readonly PartUse[]): Generator<Reference> {
  for (const [n, use] of uses.entries()) {
    yield { field: `${field}[${n}].part`, kind: "part", id: use.part };
    yield* ofMatches(`${field}[${n}].onlyAt`, use.onlyAt);
    for (const [m, other] of use.instead.entries()) {
      yield { field: `${field}[${n}].instead[${m}].part`, kind: "part", id: other.part };
      yield* ofMatches(`${field}[${n}].instead[${m}].at`, other.at);
    }
  }
}

function* ofClause(field: string, clause: CautionClause): Generator<Reference> {
  yield* ofMatches(`${field}.findings`, clause.findings);
  yield* named(`${field}.unseen`, "check", clause.unseen);
  yield* named(`${field}.operations`, "operation", clause.operations);
  yield* named(`${field}.uses`, "part", clause.uses);
}

function ofMatches(field: string, matches: readonly LevelMatch[]): Reference[] {
  return matches.flatMap((match, n) => ofMatch(`${field}[${n}]`, match));
}

/** The check, and each of its levels: one reference each. */
function ofMatch(field: string, { check, levels }: LevelMatch): Reference[] {
  return [
    { field, kind: "check", id: check },
    ...levels.map((level): Reference => ({ field, kind: "level", id: `${check}:${level}` })),
  ];
}

function named(field: string, kind: Kind, ids: readonly string[]): Reference[] {
  return ids.map((id, n) => ({ field: `${field}[${n}]`, kind, id }));
}
