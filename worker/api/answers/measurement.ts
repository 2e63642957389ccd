import * as z from "zod";
import type { Derivation, Measurement } from "../../engine/inspection/check.ts";
import { conditions } from "./condition.ts";
import { id, words } from "./figures.ts";

const threshold = z.strictObject({ level: id, from: z.number().nullable(), below: z.number().nullable() });
const thresholds = z.array(threshold).describe("The level whose from <= value < below; null is an open end");
const twoInputs = z.tuple([id, id]);

const derivation = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("string-test"), defaultRatio: z.number() }),
  z.strictObject({
    kind: z.literal("elongation"),
    pitches: z.int(),
    pitch: z.number(),
    shortestAllowedPercent: z.number(),
  }),
  z.strictObject({ kind: z.literal("absolute-difference"), of: twoInputs }),
  z.strictObject({ kind: z.literal("surplus"), of: twoInputs }),
  z.strictObject({ kind: z.literal("value"), of: id }),
  z.strictObject({
    kind: z.literal("bead-seat"),
    of: id,
    supply: z.record(id, z.array(z.number())),
    unknownLevel: id,
  }),
]) satisfies z.ZodType<Derivation>;

/** How a check is measured: what to enter, and what it is held against. */
export const measurement = z.strictObject({
  unit: words,
  inputs: z.array(
    z.strictObject({
      id,
      label: words,
      unit: z.enum(["mm", "count", "years"]),
      min: z.number(),
      max: z.number(),
      optional: z.boolean(),
    }),
  ),
  derivation,
  thresholds,
  thresholdsWhen: z
    .array(z.strictObject({ when: conditions, thresholds }))
    .describe("Other limits on some bicycles: the first that holds"),
  flags: z
    .array(z.strictObject({ id, label: words, setsLevel: id.exactOptional(), raisesTo: id.exactOptional() }))
    .describe("Marks to set beside a measurement; they win over it"),
  readingError: z.number().describe("One reading error, in the unit of what is held against the limits"),
}) satisfies z.ZodType<Measurement>;
