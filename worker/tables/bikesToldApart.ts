import { ATTRIBUTE_VALUES, type AttributeName, type Attributes, type Condition } from "../engine/bicycle.ts";

/**
 * One bike for every way in which conditions can come out: for each attribute that they name, one value of each set of values that no
 * condition tells apart, in all combinations. What they do not name takes its first value.
 */
export function bikesToldApart(conditions: readonly Condition[]): readonly Attributes[] {
  let bikes: readonly Attributes[] = [FIRST];
  for (const [attribute, values] of valuesToldApart(conditions)) {
    bikes = bikes.flatMap((bike) => values.map((value) => ({ ...bike, [attribute]: value })));
  }
  return bikes;
}

const FIRST = Object.fromEntries(
  Object.entries(ATTRIBUTE_VALUES).map(([name, values]) => [name, values[0]]),
) as unknown as Attributes;

function valuesToldApart(conditions: readonly Condition[]): ReadonlyMap<AttributeName, readonly string[]> {
  const byAttribute = new Map<AttributeName, Map<string, readonly string[]>>();
  for (const { attribute, isOneOf } of conditions) {
    const lists = byAttribute.get(attribute) ?? new Map<string, readonly string[]>();
    byAttribute.set(attribute, lists.set(isOneOf.join(), isOneOf));
  }
  return new Map(
    [...byAttribute].map(([attribute, lists]) => {
      const representatives = new Map<string, string>();
      for (const value of ATTRIBUTE_VALUES[attribute]) {
        const pattern = [...lists.values()].map((list) => (list.includes(value) ? 1 : 0)).join("");
        if (!representatives.has(pattern)) representatives.set(pattern, value);
      }
      return [attribute, [...representatives.values()]];
    }),
  );
}
