import * as z from "zod";
import type { RaisedCaution } from "../../engine/decision/appraisal.ts";
import type { FindingsAnswer } from "../../engine/decision/inspectFind.ts";
import type { RaisedBy } from "../../engine/inspection/history/raisedBy.ts";
import { id, ids, share, words } from "./figures.ts";
import { finding, markedTyre, mismatch } from "./finding.ts";

/** A caution with what raised it. */
export const caution = z.strictObject({
  id,
  title: words,
  kind: z.enum(["hard", "soft"]).describe("hard: comes before any money"),
  text: words,
  because: words.describe("What raised it"),
  bears: z
    .strictObject({ checks: ids, operations: ids })
    .describe("Where it is to stand: the checks that raised it, and the work in open plans it is about"),
}) satisfies z.ZodType<RaisedCaution>;

const raisedBy = z.strictObject({
  check: id,
  level: id,
  oddsFactor: z
    .number()
    .min(1)
    .describe("Odds of the fault at this level or worse, over what they would be without this finding"),
}) satisfies z.ZodType<RaisedBy>;

const counted = { made: z.int().min(0), applicable: z.int().min(0) };

/** What looking at the bicycle came to: the part of an answer that holds no money. */
export const inspection = {
  dataVersion: z.string().min(1).describe("Hash of the tables the answer comes from"),
  findings: z.array(finding).describe("In the order of the checks; front before rear"),
  mismatches: z.array(mismatch),
  tyre: markedTyre.nullable().describe("The tyre's marking taken apart; null where none was given"),
  ignored: z
    .array(z.strictObject({ check: id, reason: words }))
    .describe("Observations on checks that do not apply to this bicycle"),
  readiness: z
    .strictObject({
      ready: z.boolean(),
      blocking: ids.describe("Checks that stand at a level that blocks riding"),
      owed: ids.describe("Checks still to be made before riding or selling as rideable"),
    })
    .describe("Ready only when every check that blocks was made and none blocks"),
  looked: z
    .strictObject({ ...counted, groups: z.array(z.strictObject({ group: id, ...counted })) })
    .describe("How much of what applies was looked at"),
  history: z
    .strictObject({
      weather: share.describe("Kept in the wet or damp"),
      mileage: share.describe("Ridden far"),
      neglect: share.describe("Not maintained, or badly"),
      crash: share.describe("Fell or collided"),
    })
    .describe(
      "Chance of each part of its past, after what was seen; links the faults that nobody looked for",
    ),
  hidden: z
    .array(
      z.strictObject({
        check: id,
        level: id,
        probability: share.describe("After what was seen"),
        prior: share.describe("Before anything was seen"),
        raisedBy: z.array(raisedBy).max(3).describe("Findings that raise it most, largest factor first"),
      }),
    )
    .describe("Faults that nobody looked for, likeliest first"),
  cautions: z.array(caution),
} satisfies Record<string, z.ZodType>;

/** The answer of POST /v1/findings. */
export const findingsAnswer = z.strictObject(inspection) satisfies z.ZodType<FindingsAnswer>;
