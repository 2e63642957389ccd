import * as z from "zod";
import type { Check, Level, LevelAdjustment, Measurement } from "../engine/inspection/check.ts";
import { condition, conditions, id } from "./conditionSchema.ts";
import { measurement } from "./measurementSchema.ts";

const words = z.string().min(1);
const safety = z.enum(["none", "advisory", "block", "owed"]);

const level = z
  .strictObject({
    id,
    label: words.exactOptional(),
    severity: z.literal([0, 1, 2, 3, 4]),
    safety,
    description: words,
    conditionPenalty: z.number().min(0).max(1),
    terminal: z.enum(["parts-or-recycle", "recycle", "decide-first", "stop"]).nullable().default(null),
    terminalReason: words.exactOptional(),
    note: words.exactOptional(),
  })
  .refine((row) => (row.terminal === null) === (row.terminalReason === undefined), {
    error: "a level that ends a job says why, and no other does",
  }) satisfies z.ZodType<Level>;

const adjustment = z.strictObject({
  level: id,
  when: z.array(condition).min(1),
  safety,
  note: words,
}) satisfies z.ZodType<LevelAdjustment>;

const check = z.strictObject({
  id,
  name: words,
  group: z.enum([
    "frame-fork",
    "steering",
    "wheels-tyres",
    "transmission",
    "brakes",
    "contact-points",
    "paperwork",
  ]),
  spoke: z.enum([
    "papers and equipment",
    "frame",
    "alignment",
    "fork",
    "headset and stem",
    "bar",
    "post and saddle",
    "rims and spokes",
    "hubs",
    "tyres",
    "transmission",
    "brakes",
  ]),
  where: z.enum(["spot", "bench", "dismantled"]),
  priority: z.enum(["triage", "core", "extra"]),
  minutes: z.number().positive(),
  tools: z.array(words).default([]),
  how: words,
  appliesTo: conditions,
  perWheel: z.boolean(),
  ordered: z.boolean(),
  functional: z.boolean(),
  levels: z.array(level).min(2),
  adjustments: z.array(adjustment).default([]),
  measurement: measurement.nullable().default(null),
  neededFrom: z
    .array(
      z.strictObject({
        sprocketsFrom: z.int().positive(),
        sprocketsTo: z.int().positive(),
        unknown: z.boolean().default(false),
        level: id,
      }),
    )
    .default([]),
  ifNotChecked: z.enum(["block", "advisory", "none"]),
  limitSource: z.strictObject({
    text: words,
    kind: z.enum(["standard", "law", "common practice"]),
    fromMemory: z.boolean(),
  }),
  note: words.exactOptional(),
}) satisfies z.ZodType<Check>;

/** An inspection check: the levels it names exist, the first is no fault, and ordered levels never grow milder. */
export const checkRow = check.superRefine((row, context) => {
  const refuse = (path: string, message: string) =>
    context.addIssue({ code: "custom", path: [path], message });
  const levels = row.levels.map((one) => one.id);
  for (const named of levelsNamed(row).filter((one) => !levels.includes(one))) {
    refuse("levels", `${named} is no level of ${row.id}`);
  }
  if (new Set(levels).size < levels.length) refuse("levels", `${row.id} has a level twice`);
  if (row.levels[0]?.severity !== 0) refuse("levels", `the first level of ${row.id} is no fault`);
  if (row.ordered && row.levels.some((one, at) => one.severity < (row.levels[at - 1]?.severity ?? 0))) {
    refuse("levels", `the levels of ${row.id} are ordered from best to worst`);
  }
  const inputs = row.measurement?.inputs.map((one) => one.id) ?? [];
  for (const named of inputsNamed(row.measurement).filter((one) => !inputs.includes(one))) {
    refuse("measurement", `${named} is no input of ${row.id}`);
  }
}) satisfies z.ZodType<Check>;

function levelsNamed({ adjustments, measurement, neededFrom }: Check): string[] {
  const rows = [...adjustments, ...neededFrom].map((row) => row.level);
  if (measurement === null) return rows;
  const { derivation, flags, thresholds, thresholdsWhen } = measurement;
  return [
    ...rows,
    ...[...thresholds, ...thresholdsWhen.flatMap((one) => one.thresholds)].map((row) => row.level),
    ...flags.flatMap((one) => [one.setsLevel ?? [], one.raisesTo ?? []].flat()),
    ...(derivation.kind === "bead-seat" ? [...Object.keys(derivation.supply), derivation.unknownLevel] : []),
  ];
}

function inputsNamed(measurement: Measurement | null): readonly string[] {
  switch (measurement?.derivation.kind) {
    case "absolute-difference":
    case "surplus":
      return measurement.derivation.of;
    case "value":
    case "bead-seat":
      return [measurement.derivation.of];
    case "string-test":
      return ["left", "right", "headToSeatTube", "headToAxle"];
    default:
      return [];
  }
}
