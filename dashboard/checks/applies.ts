import type { AttributeDefault, AttributeName, Check, Condition } from "../api/types.ts";

/** A description, as far as it goes. */
export type Described = { readonly [Name in AttributeName]?: string | undefined };

/** The description with every gap filled: the first row of defaults whose conditions hold on what is settled before it. */
export function settled(described: Described, defaults: readonly AttributeDefault[]): Described {
  const attributes: { [Name in AttributeName]?: string | undefined } = { ...described };
  for (const { attribute, when, value } of defaults) {
    if (attributes[attribute] === undefined && holds(when, attributes)) attributes[attribute] = value;
  }
  return attributes;
}

/** The checks that apply to a bike of this description. */
export function applicable(checks: readonly Check[], attributes: Described): readonly Check[] {
  return checks.filter(({ appliesTo }) => holds(appliesTo, attributes));
}

/** What a level of a check means for riding or selling, on a bike of this description. */
export function safetyOf(check: Check, level: Check["levels"][number], attributes: Described): string {
  const adjusted = check.adjustments.find((row) => row.level === level.id && holds(row.when, attributes));
  return (adjusted ?? level).safety;
}

/** Whether every condition holds on a description that is settled. */
export function holds(conditions: readonly Condition[], attributes: Described): boolean {
  return conditions.every(({ attribute, isOneOf }) => isOneOf.includes(attributes[attribute] ?? ""));
}
