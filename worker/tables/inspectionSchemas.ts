import * as z from "zod";
import { ATTRIBUTE_VALUES, type AttributeDefault } from "../engine/bicycle.ts";
import type { Acquittal, Prior, PriorModifier } from "../engine/inspection/check.ts";
import { attribute, condition, conditions, id, isValueOf } from "./conditionSchema.ts";

export { checkRow } from "./checkSchema.ts";
export { condition };

/** The rows of the inspection's tables. Empty lists and nulls may be left out of a row; unknown fields are refused. */

/** Chances of a check's levels for one era and one way of being kept; they sum to 1. */
export const priorRow = z.strictObject({
  check: id,
  era: z.enum(ATTRIBUTE_VALUES.era),
  kept: z.enum(ATTRIBUTE_VALUES.kept),
  probabilities: z
    .array(z.number().min(0).max(1))
    .min(2)
    .refine((chances) => Math.abs(chances.reduce((sum, one) => sum + one, 0) - 1) < 1e-9, {
      error: "probabilities sum to 1",
    }),
}) satisfies z.ZodType<Prior>;

/** A multiplier on the odds of a level or worse, on some bikes. */
export const priorModifierRow = z.strictObject({
  check: id,
  fromLevel: id,
  when: z.array(condition).min(1),
  odds: z.number().positive(),
}) satisfies z.ZodType<PriorModifier>;

/** What a good finding, or the description alone, clears. */
export const acquittalRow = z
  .strictObject({
    check: id.nullable().default(null),
    level: id.nullable().default(null),
    acquits: z.array(id).min(1),
    when: conditions,
  })
  .refine((row) => (row.check === null ? row.level === null && row.when.length > 0 : row.level !== null), {
    error: "a finding has a check and a level; without one the description decides",
  }) satisfies z.ZodType<Acquittal>;

/** A default for one attribute that the description leaves out. */
export const attributeDefaultRow = z
  .strictObject({ attribute, when: conditions, value: z.string() })
  .refine((row) => isValueOf(row.attribute, row.value), {
    error: "the value is one of the attribute's",
  }) satisfies z.ZodType<AttributeDefault>;
