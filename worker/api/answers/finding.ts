import * as z from "zod";
import type { ReportedFinding } from "../../engine/decision/appraisal.ts";
import type { Mismatch } from "../../engine/inspection/finding.ts";
import type { MarkedTyre } from "../../engine/inspection/markedTyre.ts";
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

const candidate = z.strictObject({ diameterMm: z.number(), reason: words });

/** The tyre's marking taken apart, to be shown beside the tyre. */
export const markedTyre = z.strictObject({
  marking: words,
  reading: z
    .enum(["one", "several", "tubular", "unlisted"])
    .describe(
      "one: settles the bead seat; several: leaves more than one; tubular: has none; unlisted: no known size has this name",
    ),
  width: z
    .strictObject({ value: z.number(), unit: z.enum(["mm", "in"]) })
    .nullable()
    .describe("As the marking writes it; null where it names none"),
  beadSeatDiameterMm: z.number().nullable().describe("Null where the marking does not settle it"),
  text: words.describe("Why, and where it is not settled what to do"),
  candidates: z.array(candidate).describe("Bead seats in question, largest first; one where it is settled"),
  lookAlikes: z
    .array(candidate.extend({ names: z.array(words) }))
    .describe("Sizes that share a name with the one settled and do not fit its rim, the nearest first"),
}) satisfies z.ZodType<MarkedTyre>;
