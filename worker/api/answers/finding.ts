import * as z from "zod";
import type { ReportedFinding } from "../../engine/decision/appraisal.ts";
import type { Mismatch } from "../../engine/inspection/finding.ts";
import { id, ids, words } from "./figures.ts";

/** A check that was looked at, with the level it came to. */
export const finding = z.strictObject({
  check: id,
  position: z
    .enum(["bike", "front", "rear", "both"])
    .describe("both: a check of the wheels answered once for the two"),
  level: id,
  rank: z.int().min(0).describe("Place of the level in the check's list; 0 is no fault"),
  severity: z.literal([0, 1, 2, 3, 4]),
  safety: z
    .enum(["none", "advisory", "block", "owed"])
    .describe(
      "block: not ridden or sold as rideable until cured; advisory: cure or tell the buyer; owed: a step still to be taken",
    ),
  source: z.enum(["observed", "measured"]),
  derived: z
    .strictObject({ value: z.number(), unit: words })
    .exactOptional()
    .describe("What was held against the limits, where the check was measured"),
  borderline: z
    .tuple([id, id])
    .exactOptional()
    .describe("Within one reading error of a limit: the two levels in question. Measure again"),
  note: words,
  safetyBlock: z.boolean().describe("Blocks riding still: a fault that work done so far has cured does not"),
  curedBy: ids.describe("Work done so far that cured it; the level is still the one found"),
}) satisfies z.ZodType<ReportedFinding>;

/** Two markings that share a name but not a diameter, or a tyre that does not belong on the rim. */
export const mismatch = z.strictObject({
  text: words,
  diameters: z.tuple([z.number(), z.number()]).describe("Bead seat diameters, mm"),
}) satisfies z.ZodType<Mismatch>;
