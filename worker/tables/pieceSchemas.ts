import * as z from "zod";
import { ATTRIBUTE_VALUES, type AttributeName } from "../engine/bicycle.ts";
import type { PartsValueTable, PieceTable } from "../engine/valuation/valueTables.ts";
import { attribute, conditions, id, isValueOf } from "./conditionSchema.ts";

/** The pieces that a bike breaks into. All figures are invented. */

export const share = z.number().min(0).max(1);
export const words = z.string().min(1);
export const byTier = z.strictObject({ entry: share, mid: share, upper: share, top: share });
const minutes = z.number().positive();
const levels = z.strictObject({ check: words, levels: z.array(words).min(1) });

/** What a bad finding takes off a piece. */
export const spoiledPiece = z.strictObject({ ...levels.shape, piece: id, share }) satisfies z.ZodType<
  PartsValueTable["spoiled"][number]
>;

const kind = z.strictObject({
  name: words,
  onlyIf: conditions,
  parts: z.array(id).min(1),
  share: byTier,
  sells: byTier,
  minutes,
});

const plain = z.partialRecord(attribute, z.string()).superRefine((row, context) => {
  for (const [name, value] of Object.entries(row) as [AttributeName, string][]) {
    if (!isValueOf(name, value)) {
      const message = `${name} is one of ${ATTRIBUTE_VALUES[name].join(", ")}, got ${value}`;
      context.addIssue({ code: "custom", path: [name], message });
    }
  }
});

/** Which pieces sell by themselves, and which nobody sells after a crash. */
export const pieceTable = z.strictObject({
  most: z.int().positive(),
  plain,
  frame: z.strictObject({ name: words, sells: byTier, minutes }),
  others: z.array(z.strictObject({ id, kinds: z.array(kind).min(1) })).min(1),
  crash: z.strictObject({ signs: z.array(levels).min(1), exposed: z.array(id).min(1) }),
}) satisfies z.ZodType<PieceTable>;
