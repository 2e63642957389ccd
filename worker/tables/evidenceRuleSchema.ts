import * as z from "zod";
import { id } from "./conditionSchema.ts";

/**
 * By how much the levels seen on one check (from one on, or up to one) should multiply the odds that another, which nobody looked at, stands at
 * a level or worse. The hidden history is fitted to these.
 */
export const evidenceRule = z.strictObject({
  seen: z
    .strictObject({ check: id, atLeast: id.exactOptional(), atMost: id.exactOptional() })
    .refine((row) => (row.atLeast === undefined) !== (row.atMost === undefined), {
      error: "either atLeast or atMost",
    }),
  unseen: z.strictObject({ check: id, atLeast: id }),
  odds: z.number().positive(),
  reason: z.string().min(1),
});

export type EvidenceRule = z.output<typeof evidenceRule>;
