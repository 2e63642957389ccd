import { type Attributes, type Condition, holds } from "../engine/bicycle.ts";
import type { Money, MoneyPerHour } from "../engine/quantity.ts";
import type { Failure, LevelMatch, Operation, PartUse, Step } from "../engine/service/operation.ts";
import type { Part } from "../engine/service/part.ts";
import { isAllowed } from "./cureCoverage.ts";
import type { ParsedTables } from "./parsedTables.ts";

/** The workshop's rows by id, and what an hour is worth. */
export interface PriceList {
  readonly operations: ReadonlyMap<string, Operation>;
  readonly steps: ReadonlyMap<string, Step>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly hourlyGoal: MoneyPerHour;
}

export function priceList(tables: ParsedTables): PriceList {
  const byId = <T extends { readonly id: string }>(rows: readonly T[]) =>
    new Map(rows.map((row) => [row.id, row]));
  return {
    operations: byId(tables.operations),
    steps: byId(tables.steps),
    parts: byId(tables.parts),
    hourlyGoal: tables.defaults.hourlyGoal,
  };
}

/** One fault, alone, on one bike. */
export interface LoneFault {
  readonly bike: Attributes;
  readonly check: string;
  readonly level: string;
}

/**
 * What the cheapest option costs by the typical figures: parts, likely minutes and each step once at the hourly goal, plus each
 * failure's chance times its cheapest consequence. At both wheels where there are two. A plan shares more and knows the spread; this
 * serves the tables' own order alone.
 * @returns Infinity where the bike allows none
 */
export function cheapestCure(
  options: readonly (readonly string[])[],
  fault: LoneFault,
  list: PriceList,
): Money {
  return Math.min(...options.map((option) => optionCost(option, fault, list, true)), Infinity);
}

function optionCost(option: readonly string[], fault: LoneFault, list: PriceList, follow: boolean): Money {
  const operations = new Set(option);
  const steps = new Set<Step>();
  let cost = 0;
  for (const id of operations) {
    const operation = list.operations.get(id)!;
    if (!isAllowed(operation, fault.bike)) return Infinity;
    for (const entailed of operation.entails) {
      if (isAllowed(list.operations.get(entailed)!, fault.bike)) operations.add(entailed);
    }
    const variant = operation.variants.find(({ at, when }) => stands(at, fault) && holds(when, fault.bike));
    for (const step of closure(variant?.steps ?? operation.steps, list)) {
      if (!holds(step.onlyIf, fault.bike)) continue;
      steps.add(step);
      for (const entailed of step.entails) operations.add(entailed);
    }
    const places = operation.per === "wheel" ? (["front", "rear"] as const) : ([null] as const);
    for (const place of places) {
      cost += worth((variant?.minutes ?? operation.minutes).likely, list);
      for (const use of variant?.uses ?? operation.uses) cost += useCost(use, place, fault, list);
      if (operation.failure && follow) cost += failureCost(operation.failure, fault, list);
    }
  }
  for (const step of steps) cost += worth(step.minutes.likely, list);
  return cost;
}

function failureCost(failure: Failure, fault: LoneFault, list: PriceList): Money {
  const chance = failure.chances.find((row) => appliesTo(row, fault))!.probability;
  const next = failure.thenOneOf.map((option) => optionCost(option, fault, list, false));
  return chance * (worth(failure.extraMinutes, list) + (next.length > 0 ? Math.min(...next) : 0));
}

function useCost(use: PartUse, place: "front" | "rear" | null, fault: LoneFault, list: PriceList): Money {
  if (!appliesTo({ when: use.when, at: use.onlyAt }, fault)) return 0;
  const other = use.instead.find(
    (row) => appliesTo(row, fault) && (row.position === null || row.position === place),
  );
  const part = list.parts.get(other?.part ?? use.part)!;
  return (other?.quantity ?? use.quantity) * typicalPrice(part, fault.bike);
}

/** As the part is bought for a bike of this tier. */
function typicalPrice({ buy, prices }: Part, { componentTier }: Attributes): Money {
  const table = buy.state === "used" && prices.used !== null ? prices.used : prices.new;
  const tiers = Object.keys(table) as Attributes["componentTier"][];
  const wanted = Math.max(0, tiers.indexOf(componentTier) - buy.tiersBelow);
  const best = buy.tierCap === undefined ? tiers.length : tiers.indexOf(buy.tierCap);
  return table[tiers[Math.min(wanted, best)]!].typical;
}

function* closure(ids: readonly string[], list: PriceList): Generator<Step> {
  for (const id of ids) {
    const step = list.steps.get(id)!;
    yield step;
    yield* closure(step.implies, list);
  }
}

function appliesTo(
  { when, at }: { readonly when: readonly Condition[]; readonly at: readonly LevelMatch[] },
  fault: LoneFault,
): boolean {
  return holds(when, fault.bike) && (at.length === 0 || at.some((match) => stands(match, fault)));
}

function stands({ check, levels }: LevelMatch, fault: LoneFault): boolean {
  return check === fault.check && levels.includes(fault.level);
}

function worth(minutes: number, { hourlyGoal }: PriceList): Money {
  return (minutes / 60) * hourlyGoal;
}
