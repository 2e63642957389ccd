import * as z from "zod";
import { id } from "./conditionSchema.ts";

/** By how much a level seen on one check should multiply the odds of a level of another. The hidden history is fitted to these. */
export const evidenceRule = z.strictObject({
  seen: z.union([z.strictObject({ check: id, atLeast: id }), z.strictObject({ check: id, atMost: id })]),
  unseen: z.strictObject({ check: id, atLeast: id }),
  odds: z.number().positive(),
  reason: z.string().min(1),
});

export type EvidenceRule = z.output<typeof evidenceRule>;
