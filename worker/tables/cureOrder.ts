import { ATTRIBUTE_VALUES, type Attributes, type Condition, holds } from "../engine/bicycle.ts";
import type { Check } from "../engine/inspection/check.ts";
import type { Operation, Remedy } from "../engine/service/operation.ts";
import { bikesToldApart } from "./bikesToldApart.ts";
import { cheapestCure, type PriceList, priceList } from "./cureCost.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { FILES } from "./rawTables.ts";
import { TableError } from "./tableError.ts";

/** Half a hundredth of the currency: below it two sums are the same price. */
const SAME_PRICE = 0.005;

/** Levels of an ordered check whose cheapest cure costs less than that of a milder level, on any bike and in any tier. */
export function* cheaperWhenWorse(tables: ParsedTables): Generator<TableError> {
  const list = priceList(tables);
  for (const check of tables.checks.filter(({ ordered }) => ordered)) {
    const remedies = tables.remedies.filter((row) => row.check === check.id && row.options.length > 0);
    if (new Set(remedies.map(({ level }) => level)).size > 1)
      yield* cheaperLevels(check, remedies, list, tables);
  }
}

function* cheaperLevels(
  check: Check,
  remedies: readonly Remedy[],
  list: PriceList,
  tables: ParsedTables,
): Generator<TableError> {
  for (const bike of bikesConcerned(check, remedies, list)) {
    let milder = { level: "", cost: 0 };
    for (const { id } of check.levels) {
      const remedy = remedies.find((row) => row.level === id && holds(row.when, bike));
      if (!remedy) continue;
      const cost = cheapestCure(remedy.options, { bike, check: check.id, level: id }, list);
      if (cost < milder.cost - SAME_PRICE) {
        const row = (tables.remedies as readonly Remedy[]).indexOf(remedy);
        const requirement = `a cure no cheaper than that of the milder ${check.id}:${milder.level} (${milder.cost.toFixed(2)}), got ${cost.toFixed(2)} for ${id}`;
        yield new TableError(FILES.remedies, row, "options", requirement);
        return;
      }
      milder = { level: id, cost };
    }
  }
}

/** The bikes that conditions on remedies, work, parts and failures tell apart, in all four tiers. */
function bikesConcerned(check: Check, remedies: readonly Remedy[], list: PriceList): readonly Attributes[] {
  const tiers = ATTRIBUTE_VALUES.componentTier.map(
    (tier): Condition => ({ attribute: "componentTier", isOneOf: [tier] }),
  );
  const operations = reachable(
    remedies.flatMap(({ options }) => options.flat()),
    list,
  );
  const conditions = [
    ...check.appliesTo,
    ...remedies.flatMap(({ when }) => when),
    ...operations.flatMap((operation) => conditionsOf(operation, list)),
    ...tiers,
  ];
  return bikesToldApart(conditions).filter((bike) => holds(check.appliesTo, bike));
}

/** The operations, and those that follow where they fail or that their steps entail. */
function reachable(ids: readonly string[], { operations, steps }: PriceList): readonly Operation[] {
  const found = new Set(ids);
  for (const id of found) {
    const operation = operations.get(id)!;
    for (const next of operation.failure?.thenOneOf.flat() ?? []) found.add(next);
    for (const next of operation.entails) found.add(next);
    for (const next of operation.steps.flatMap((step) => steps.get(step)!.entails)) found.add(next);
  }
  return [...found].map((id) => operations.get(id)!);
}

function conditionsOf(operation: Operation, { steps }: PriceList): readonly Condition[] {
  const { onlyIf, notOnMaterials, uses, failure, variants } = operation;
  return [
    ...onlyIf,
    { attribute: "frameMaterial", isOneOf: notOnMaterials },
    ...uses.flatMap(({ when, instead }) => [...when, ...instead.flatMap((row) => row.when)]),
    ...(failure?.chances ?? []).flatMap(({ when }) => when),
    ...variants.flatMap(({ when }) => when),
    ...operation.steps.flatMap((step) => steps.get(step)!.onlyIf),
  ];
}
