import * as z from "zod";
import type { Reference } from "../reference/reference.ts";
import { currency } from "../schemas/currency.ts";
import { check } from "./check.ts";
import { ATTRIBUTE_NAMES, attributeDefault } from "./condition.ts";
import { defaults } from "./defaults.ts";
import { id, money, words } from "./figures.ts";
import { sellingTables } from "./sellingTables.ts";

/** A word that a field accepts, with what to show for it. */
export const choice = z.strictObject({ value: id, label: words });
const attribute = z.enum(ATTRIBUTE_NAMES);

const operation = z.strictObject({
  id,
  name: words,
  skill: z.literal([1, 2, 3, 4]),
  tools: z.array(id),
  doneBy: z.enum(["self", "service"]),
  safetyCritical: z.boolean(),
  settles: z
    .array(z.strictObject({ check: id, levels: z.array(id) }))
    .describe("Of a test or a query: the levels that stand until its result is answered at their check"),
});

/** The answer of GET /v1/reference: everything a form needs. */
export const referenceAnswer = z.strictObject({
  version: z.string().min(1).describe("Hash of the tables' content"),
  demoData: z.literal(true).describe("Prices and chances are invented demo data"),
  currency: currency.describe("Default currency"),
  currencies: z.array(currency),
  attributes: z
    .record(attribute, z.array(choice))
    .describe("Every word of a description, with the values it takes, in order"),
  attributeLabels: z.record(attribute, words).describe("What to call each of them"),
  attributeDefaults: z
    .array(attributeDefault)
    .describe("How an attribute left out is settled: its first row whose conditions hold; in order"),
  groups: z.array(choice).describe("The seven groups of the catalogue"),
  checks: z.array(check),
  operations: z.array(operation),
  parts: z.array(
    z.strictObject({
      id,
      name: words,
      kind: z.enum(["part", "consumable", "service"]),
      unit: words,
      sizes: z
        .array(z.strictObject({ what: words, check: id.exactOptional() }))
        .describe("What to measure or look at before one is ordered, with the check that shows it"),
    }),
  ),
  tools: z
    .array(z.strictObject({ id, name: words, buy: money, borrow: money }))
    .describe("Special tools, with what they cost to buy or borrow"),
  cautions: z.array(z.strictObject({ id, title: words, text: words })),
  defaults: defaults.describe("What stands in for what a request leaves out"),
  selling: sellingTables.describe("What a selling plan assumes where a request does not say"),
}) satisfies z.ZodType<Reference>;
