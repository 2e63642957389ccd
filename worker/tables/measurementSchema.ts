import * as z from "zod";
import type { Derivation, Measurement, Threshold } from "../engine/inspection/check.ts";
import { condition, id } from "./conditionSchema.ts";

const words = z.string().min(1);

const threshold = z.strictObject({
  level: id,
  from: z.number().nullable().default(null),
  below: z.number().nullable().default(null),
}) satisfies z.ZodType<Threshold>;

/** From the lowest value to the highest without gap or overlap, open at the top. */
const thresholds = z.array(threshold).refine(tile, {
  error: "thresholds follow one another without gap or overlap and are open at the top",
});

function tile(rows: readonly Threshold[]): boolean {
  const rising = [...rows].sort((a, b) => (a.from ?? -Infinity) - (b.from ?? -Infinity));
  return rising.every(({ below }, at) => below === (rising[at + 1]?.from ?? null));
}

const pairOfInputs = z.tuple([id, id]);
const derivation = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("string-test"), defaultRatio: z.number().gt(0).lt(1) }),
  z.strictObject({
    kind: z.literal("elongation"),
    pitches: z.int().positive(),
    pitch: z.number().positive(),
    shortestAllowedPercent: z.number().negative(),
  }),
  z.strictObject({ kind: z.literal("absolute-difference"), of: pairOfInputs }),
  z.strictObject({ kind: z.literal("surplus"), of: pairOfInputs }),
  z.strictObject({ kind: z.literal("value"), of: id }),
  z.strictObject({
    kind: z.literal("bead-seat"),
    of: id,
    supply: z.record(id, z.array(z.number().min(0))),
    unknownLevel: id,
  }),
]) satisfies z.ZodType<Derivation>;

const measuredInput = z
  .strictObject({
    id: z.string().regex(/^[a-z][a-zA-Z0-9]*$/),
    label: words,
    unit: z.enum(["mm", "count", "years"]),
    min: z.number(),
    max: z.number(),
    optional: z.boolean().default(false),
  })
  .refine((row) => row.min < row.max, { error: "min lies below max" });

/** How a check is measured: its inputs, what is made of them, and the limits between the levels. */
export const measurement = z.strictObject({
  unit: words,
  inputs: z.array(measuredInput).min(1),
  derivation,
  thresholds: thresholds.default([]),
  thresholdsWhen: z.array(z.strictObject({ when: z.array(condition).min(1), thresholds })).default([]),
  flags: z
    .array(z.strictObject({ id, label: words, setsLevel: id.exactOptional(), raisesTo: id.exactOptional() }))
    .default([]),
  readingError: z.number().min(0),
}) satisfies z.ZodType<Measurement>;
