import * as z from "zod";
import { KEPT } from "../engine/bicycle.ts";
import { FACTORS } from "../engine/inspection/history/factor.ts";
import type { HistoryTable } from "../engine/inspection/history/historyTable.ts";
import { id } from "./conditionSchema.ts";

const chance = z.number().gt(0).lt(1);
const loading = z.number().positive().max(1).exactOptional();

/** The four factors of a bike's hidden history and what they do to the checks. */
export const historyTable = z
  .strictObject({
    scale: z.number().positive(),
    factors: z.array(
      z.strictObject({
        id: z.enum(FACTORS),
        name: z.string().min(1),
        chance: z.record(z.enum(KEPT), chance),
      }),
    ),
    loadings: z.array(
      z.strictObject({ check: id, weather: loading, mileage: loading, neglect: loading, crash: loading }),
    ),
  })
  .refine(({ factors }) => factors.map((one) => one.id).join() === FACTORS.join(), {
    path: ["factors"],
    error: `the factors ${FACTORS.join(", ")}, in this order`,
  }) satisfies z.ZodType<HistoryTable>;
