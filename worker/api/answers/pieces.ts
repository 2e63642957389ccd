import * as z from "zod";
import type { ReportedPiece } from "../../engine/decision/appraisal.ts";
import { id, ids, minutes, money, share, words } from "./figures.ts";

const reason = z
  .enum(["frame-blocked", "crash-exposed", "spoiled", "not-worth-its-minutes", "enough-listed"])
  .nullable()
  .describe(
    "Why it is given away or recycled, null where it is listed. frame-blocked: a finding forbids to sell the frame. crash-exposed: bar, stem or fork " +
      "after a sign of a crash. spoiled: a finding leaves nothing of its worth. not-worth-its-minutes: the takings do not pay the minutes at the hourly " +
      "goal, or those of all pieces together not the fixed fee and packing. enough-listed: it pays, but as many better pieces as are listed do too",
  );

const piece = z.strictObject({
  piece: id,
  name: words,
  listed: z.boolean().describe("Whether to sell it by itself where the bicycle is broken for parts"),
  reason,
  chanceUsable: share.describe("Chance that nothing not yet looked at makes it unfit to sell"),
  chanceSold: share.describe("Chance that it sells once listed"),
  price: money
    .min(0)
    .describe("What it fetches if it sells, before fee and post, less what was found spoiled of it"),
  minutes: minutes.min(0).describe("Minutes to list, pack and post it, at the user's speed"),
  fee: money.min(0).describe("Expected fee and post"),
  expected: money.min(0).describe("price x chanceUsable x chanceSold - fee"),
  lookFirst: ids.describe("Checks not made that would forbid to sell it: make them before listing it"),
});

/** The parts one by one, those to list first. */
export const pieces = z
  .array(piece)
  .describe(
    "The parts one by one, those to list first, dearest takings first. Expected takings and minutes of the listed ones are those of breaking for parts. " +
      "Missing parts are left out; empty for a bare frame. Invented prices",
  ) satisfies z.ZodType<readonly ReportedPiece[]>;
