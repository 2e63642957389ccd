import {
  ATTRIBUTE_VALUES,
  type AttributeDefault,
  type AttributeName,
  type Attributes,
  holds,
} from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import type { DescribedAttributes } from "./find.ts";

const NAMES = Object.keys(ATTRIBUTE_VALUES) as readonly AttributeName[];
const ALWAYS_DESCRIBED = ["category", "era", "frameMaterial", "componentTier"] as const;
const MAY_BE_CARBON = [
  "frameMaterial",
  "forkMaterial",
  "barMaterial",
  "rimMaterial",
  "postMaterial",
] as const;

/**
 * Every attribute of the bicycle: as described, else the first row of defaults whose conditions hold on what is
 * settled so far. The order of the rows matters: a row may ask only about attributes settled by rows above it.
 * @param described what the user said; absent is unknown
 * @param defaults rows in order; see `requireSettlingDefaults`
 * @throws DomainError `out-of-domain` where a described part is carbon and `hasCarbon` is "no" (a check that a crash
 * calls for would be left out); `inconsistent-table` where the rows leave an attribute open
 */
export function settleAttributes(
  described: DescribedAttributes,
  defaults: readonly AttributeDefault[],
): Attributes {
  refuseDeniedCarbon(described);
  // Begun with every field: grown one by one it would be looked up slowly by all that ask for an attribute.
  const settled = { ...ATTRIBUTE_VALUES } as unknown as Record<AttributeName, string | undefined>;
  for (const name of NAMES) settled[name] = described[name];
  for (const row of defaults) {
    if (settled[row.attribute] === undefined && holds(row.when, settled as Attributes)) {
      settled[row.attribute] = row.value;
    }
  }
  for (const name of NAMES) {
    if (settled[name] === undefined) {
      throw new DomainError("inconsistent-table", name, undefined, "a default that holds for every bicycle");
    }
  }
  return settled as Attributes;
}

function refuseDeniedCarbon(described: DescribedAttributes): void {
  if (described.hasCarbon !== "no") return;
  const part = MAY_BE_CARBON.find((name) => described[name] === "carbon");
  if (part !== undefined) {
    throw new DomainError(
      "out-of-domain",
      "hasCarbon",
      "no",
      `yes, or to be left out, where ${part} is carbon`,
      "/find/hasCarbon",
    );
  }
}

/**
 * Refuses defaults that cannot settle every bicycle: a condition on an attribute that is not settled yet, a value that the
 * attribute does not have, or no row without conditions for an attribute that may be left out.
 * @throws DomainError `inconsistent-table`
 */
export function requireSettlingDefaults(defaults: readonly AttributeDefault[]): void {
  const settled = new Set<AttributeName>(ALWAYS_DESCRIBED);
  for (const { attribute, when, value } of defaults) {
    const open = when.find((condition) => !settled.has(condition.attribute));
    if (open !== undefined) {
      const requirement = `conditions on attributes settled by earlier rows, for the default ${value}`;
      throw new DomainError("inconsistent-table", attribute, open.attribute, requirement);
    }
    if (!(ATTRIBUTE_VALUES[attribute] as readonly string[]).includes(value)) {
      throw new DomainError("inconsistent-table", attribute, value, "one of the attribute's values");
    }
    if (when.length === 0) settled.add(attribute);
  }
  const open = NAMES.find((name) => !settled.has(name));
  if (open !== undefined) {
    throw new DomainError("inconsistent-table", open, undefined, "a last default without conditions");
  }
}
