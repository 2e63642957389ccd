import * as z from "zod";
import { KEPT } from "../engine/bicycle.ts";
import type { Factor } from "../engine/inspection/history/factor.ts";
import type { HistoryTable } from "../engine/inspection/history/historyTable.ts";
import { id } from "./conditionSchema.ts";

const chance = z.number().gt(0).lt(1);
const loading = z.number().positive().max(1).exactOptional();

/** A factor cannot be certain or impossible: nothing seen could then speak of it. */
function factor(name: Factor) {
  return z.strictObject({
    id: z.literal(name),
    name: z.string().min(1),
    chance: z.record(z.enum(KEPT), chance),
  });
}

/** The four factors of a bike's hidden history, in the engine's order, and what they do to the checks. */
export const historyTable = z.strictObject({
  scale: z.number().positive(),
  factors: z.tuple([factor("weather"), factor("mileage"), factor("neglect"), factor("crash")]),
  loadings: z.array(
    z.strictObject({ check: id, weather: loading, mileage: loading, neglect: loading, crash: loading }),
  ),
}) satisfies z.ZodType<HistoryTable>;
