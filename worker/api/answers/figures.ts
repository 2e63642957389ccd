import * as z from "zod";
import type { Spread, ValueBand } from "../../engine/decision/appraisal.ts";

/** Money that may be below nought: a margin. */
export const money = z.number().describe("Money in the answer's currency");
export const minutes = z.number().describe("Minutes");
export const share = z.number().min(0).max(1);
export const id = z.string().min(1);
export const ids = z.array(id);
export const words = z.string();

/** Mean and 10, 50, 90 % points. */
export const spread = z
  .strictObject({ mean: z.number(), p10: z.number(), p50: z.number(), p90: z.number() })
  .describe("Mean and 10, 50 and 90 % points") satisfies z.ZodType<Spread>;

/** Going rate before haggling, fee and post. */
export const valueBand = z
  .strictObject({ p10: money, p25: money, p50: money, p75: money, p90: money })
  .describe(
    "Going rate before haggling, fee and post: 10, 25, 50, 75 and 90 % points",
  ) satisfies z.ZodType<ValueBand>;
