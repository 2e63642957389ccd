import * as z from "zod";
import { id } from "./conditionSchema.ts";

/**
 * By how much the levels seen on one check (from one on, or up to one) should multiply the odds that another, which nobody looked at, stands at
 * a level or worse. The hidden history is fitted to these.
 */
const rule = z.strictObject({
  seen: z
    .strictObject({ check: id, atLeast: id.exactOptional(), atMost: id.exactOptional() })
    .refine((row) => (row.atLeast === undefined) !== (row.atMost === undefined), {
      error: "either atLeast or atMost",
    }),
  unseen: z.strictObject({ check: id, atLeast: id }),
  odds: z.number().positive(),
  reason: z.string().min(1),
});

/** The rules, and how far evidence may move the odds at all. */
export const evidenceRules = z.strictObject({
  caps: z.strictObject({ least: z.number().gt(0).lt(1), most: z.number().gt(1) }),
  rules: z.array(rule),
});

export type EvidenceRules = z.output<typeof evidenceRules>;
export type EvidenceRule = z.output<typeof rule>;
