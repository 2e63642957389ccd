import * as z from "zod";
import type { LookingOn, NextCheck } from "../../engine/decision/looking/nextCheck.ts";
import { courseId } from "./course.ts";
import { id, ids, money } from "./figures.ts";

const minutes = z.number().min(0).describe("Minutes at the user's speed, with the dismantling that it needs");
const sampleInformation = money
  .min(0)
  .describe("What choosing after it is worth beyond choosing now, before fee and minutes");
const netGain = money.describe("The same less the fee and the minutes at the hourly goal");

const value = {
  position: z.enum(["front", "rear"]).nullable().describe("The wheel not looked at, where the other one was"),
  owed: z.boolean().describe("Must be answered before anyone rides it, whatever it is worth"),
  fee: money.min(0),
  where: z.enum(["spot", "bench", "dismantled"]),
  minutes,
  sampleInformation,
  netGain,
  gainPerMinute: money.describe("Net gain for each minute"),
  offerSwing: money
    .min(0)
    .nullable()
    .describe("Highest less lowest walk-away price over its levels; null once paid"),
  couldBecome: courseId
    .nullable()
    .describe("The likeliest course that it may change the decision to; null where no level changes it"),
  method: z
    .enum(["exact", "estimated"])
    .describe(
      "exact: everything worked out anew for each level; estimated: with plans and prices as they are now",
    ),
};

/** A check not made, a paid test or a query, with what it is worth before anything is decided. */
export const nextCheck = z.union([
  z.strictObject({ check: id, ...value }),
  z.strictObject({ operation: id, ...value }),
]) satisfies z.ZodType<NextCheck>;

const list = z
  .strictObject({ checks: ids.describe("Best first"), minutes, sampleInformation, netGain })
  .describe("All checks left in one place valued together, from 128 scenarios; papers apart");

/** Whether looking on pays. */
export const lookingOn = z.strictObject({
  spot: list,
  bench: list,
  enough: z
    .boolean()
    .describe(
      "Neither a single look nor the whole list on the spot is worth its minutes; what is owed stays owed",
    ),
}) satisfies z.ZodType<LookingOn>;
