import type { ValueDrivers } from "../../../data/scripts/valueDrivers.ts";

/** The log effect that each named column should have, read from the drivers without the engine's help. */
export function trueCoefficient(drivers: ValueDrivers, name: string): number {
  const { category, tier } = drivers.design.reference;
  const reference = drivers.readyValue[category]![tier];
  const [driver, first, second] = name.split(":") as [string, string, string];
  const factor = (terms: readonly { name: string; factor: number }[]) =>
    terms.find((term) => term.name === first)!.factor;
  const byTier = (table: Readonly<Record<string, number>>) => table[first]!;
  const { condition } = drivers;
  const ridden: Readonly<Record<string, () => number>> = {
    "needs-work": () => byTier(condition.needsWork) / byTier(condition.tired),
    tired: () => byTier(condition.tired),
    restored: () => byTier(condition.restored),
  };
  const factors: Readonly<Record<string, () => number>> = {
    level: () => reference,
    kind: () => (drivers.readyValue[first] as Readonly<Record<string, number>>)[second]! / reference,
    era: () => (drivers.era[first] as Readonly<Record<string, number>>)[second]!,
    material: () => factor(drivers.material),
    fashion: () => factor(drivers.fashion),
    size: () => drivers.size[first]!,
    originality: () => drivers.originality[{ changed: 0, mixed: 1, original: 3 }[first] as number]!,
    desirability: () => drivers.desirability,
    condition: () => (ridden[second] ?? (() => byTier(condition.notRiding[second as "does-not-ride"])))(),
    presentation: () => (drivers.presentation as Readonly<Record<string, number>>)[first]!,
    papers: () => (drivers.papers as Readonly<Record<string, number>>)[first]!,
    month: () => drivers.month[Number(first) - 1]!,
    place: () => drivers.place[first]!,
  };
  return Math.log(factors[driver]!());
}
