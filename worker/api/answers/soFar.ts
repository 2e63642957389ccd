import * as z from "zod";
import type { Appraisal } from "../../engine/decision/appraisal.ts";
import { money } from "./figures.ts";

/** Money and hours already spent on a find. */
export const soFar = z
  .strictObject({ money, hours: z.number().min(0) })
  .describe("Already spent: shown, never counted again") satisfies z.ZodType<Appraisal["soFar"]>;
