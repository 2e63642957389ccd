import * as z from "zod";
import type { Appraisal, BoughtPart } from "../../engine/decision/appraisal.ts";
import { id, ids, money } from "./figures.ts";

const boughtPart = z.strictObject({
  part: id,
  quantity: z.number().positive(),
  reuseValue: money.min(0).describe("What one is worth unused"),
}) satisfies z.ZodType<BoughtPart>;

/** What was spent, done and bought on a find. */
export const soFar = z
  .strictObject({
    money: money.describe("Spent: shown, never counted again"),
    hours: z.number().min(0).describe("Spent: shown, never counted again"),
    done: ids.describe("Work that is finished: it is in no plan"),
    bought: z.array(boughtPart).describe("Parts bought, one entry a part"),
  })
  .describe("The job so far") satisfies z.ZodType<Appraisal["soFar"]>;
