import * as z from "zod";
import type {
  CourseId,
  DecidingTest,
  Failure,
  LevelMatch,
  Operation,
  PartUse,
  Remedy,
  Reveal,
  Step,
  Variant,
} from "../engine/service/operation.ts";
import { condition } from "./inspectionSchemas.ts";
import { frameMaterial } from "./words.ts";

/** The rows of the workshop's tables. Empty lists, nulls and false may be left out of a row; unknown fields are refused. */

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const ids = z.array(id).default([]);
const words = z.string().min(1);
const chance = z.number().min(0).max(1);
const minutes = z.number().min(0);
const conditions = z.array(condition).default([]);
const position = z.enum(["front", "rear"]).nullable().default(null);

const threePoint = z
  .strictObject({ optimistic: minutes, likely: minutes, pessimistic: minutes })
  .refine((row) => row.optimistic <= row.likely && row.likely <= row.pessimistic, {
    error: "optimistic <= likely <= pessimistic",
  });

const levelMatch = z.strictObject({ check: id, levels: z.array(id).min(1) }) satisfies z.ZodType<LevelMatch>;
const levelMatches = z.array(levelMatch).default([]);

const course = z.enum([
  "restore",
  "make-safe",
  "sell-as-found",
  "break-for-parts",
  "leave",
]) satisfies z.ZodType<CourseId>;

/** A dismantling step that several operations share. */
export const stepRow = z.strictObject({
  id,
  name: words,
  minutes: threePoint,
  implies: ids,
  position,
  onlyIf: conditions,
  blockedBy: levelMatch.nullable().default(null),
  entails: ids,
}) satisfies z.ZodType<Step>;

const instead = z
  .strictObject({
    when: conditions,
    at: levelMatches,
    position,
    part: id,
    quantity: z.number().positive().exactOptional(),
  })
  .refine((row) => row.when.length + row.at.length > 0 || row.position !== null, {
    error: "a substitute says when it is bought",
  });

const partUse = z.strictObject({
  part: id,
  quantity: z.number().positive(),
  when: conditions,
  onlyAt: levelMatches,
  instead: z.array(instead).default([]),
}) satisfies z.ZodType<PartUse>;

const variant = z.strictObject({
  at: levelMatch,
  when: conditions,
  name: words.nullable().default(null),
  minutes: threePoint,
  steps: z.array(id).nullable().default(null),
  uses: z.array(partUse).nullable().default(null),
}) satisfies z.ZodType<Variant>;

const failureChances = z
  .array(z.strictObject({ when: conditions, at: levelMatches, probability: chance }))
  .min(1)
  .refine((rows) => rows.every((row, at) => isOpen(row) === (at === rows.length - 1)), {
    error: "the last row holds always, and no other does",
  });

function isOpen({ when, at }: Failure["chances"][number]): boolean {
  return when.length + at.length === 0;
}

const failure = z.strictObject({
  chances: failureChances,
  consequence: words,
  extraMinutes: minutes.default(0),
  thenOneOf: z.array(z.array(id).min(1)).default([]),
  ends: z.enum(["frame", "title"]).nullable().default(null),
  redecide: z.boolean().default(false),
}) satisfies z.ZodType<Failure>;

const reveal = z.strictObject({ check: id, atLeast: id }) satisfies z.ZodType<Reveal>;

const decidingTest = z.strictObject({
  of: id,
  at: z.array(id).min(1),
  good: id,
  bad: id,
  badChance: chance,
}) satisfies z.ZodType<DecidingTest>;

const torque = z
  .strictObject({ from: z.number().positive(), to: z.number().positive(), of: words })
  .refine((row) => row.from <= row.to, { error: "from <= to" });

/** A piece of work with its time, parts, order, risk and proof. */
export const operationRow = z.strictObject({
  id,
  name: words,
  minutes: threePoint,
  per: z.enum(["bike", "wheel", "pair"]),
  variants: z.array(variant).default([]),
  skill: z.literal([1, 2, 3, 4]),
  tools: ids,
  uses: z.array(partUse).default([]),
  after: ids,
  entails: ids,
  afterAllExcept: z.array(id).nullable().default(null),
  steps: ids,
  safetyCritical: z.boolean().default(false),
  reveals: z.array(reveal).default([]),
  failure: failure.nullable().default(null),
  openEnded: z.boolean().default(false),
  notOnMaterials: z.array(frameMaterial).default([]),
  bends: z.enum(["frame", "fork"]).nullable().default(null),
  onlyIf: conditions,
  alwaysIn: z.array(course).default([]),
  doneBy: z.enum(["self", "service"]).default("self"),
  torque: torque.nullable().default(null),
  proof: words,
  sellsParts: z.boolean().default(false),
  selling: z.boolean().default(false),
  effect: z
    .strictObject({ polishes: z.boolean().default(false), repaints: z.boolean().default(false) })
    .default({ polishes: false, repaints: false }),
  tests: z.array(decidingTest).default([]),
  note: words.exactOptional(),
}) satisfies z.ZodType<Operation>;

/** What cures a check at a level, on some bikes. */
export const remedyRow = z.strictObject({
  check: id,
  level: id,
  when: conditions,
  options: z.array(z.array(id).min(1)),
  causes: levelMatches,
}) satisfies z.ZodType<Remedy>;
