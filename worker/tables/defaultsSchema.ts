import * as z from "zod";
import { ATTRIBUTE_VALUES } from "../engine/bicycle.ts";
import type { Defaults } from "../engine/decision/catalogue.ts";

const money = z.number().min(0);
const amount = z.number().min(0);
const share = z.number().min(0).max(1);
const partIds = z.array(z.string().min(1));

const priceRange = z
  .strictObject({ low: money, typical: money, high: money })
  .refine((row) => row.low <= row.typical && row.typical <= row.high, { error: "low <= typical <= high" });

/** What stands in for what a request leaves out, and the conventions of the trade. */
export const defaultsTable = z.strictObject({
  currency: z.string().regex(/^[A-Z]{3}$/),
  hourlyGoal: money,
  goalsUpTo: z.number().positive(),
  skill: z.literal([1, 2, 3, 4]),
  speedFactor: z.number().positive(),
  speedSpread: amount,
  fee: z.strictObject({ rate: share, fixed: money }),
  packing: money,
  priceLevel: z.number().positive(),
  haggling: z.strictObject({ asFound: share, rideable: share }),
  delivery: z.strictObject({
    perOrder: priceRange,
    orders: z.strictObject({
      restore: amount,
      "make-safe": amount,
      "sell-as-found": amount,
      "break-for-parts": amount,
      leave: amount,
    }),
  }),
  calendar: z.strictObject({
    partsWaitDays: amount,
    hoursPerEvening: z.number().positive(),
    sellingDays: amount,
  }),
  desirability: share,
  originality: share,
  purchase: z.strictObject({ price: money, paid: z.boolean(), travelMinutes: amount, travelCost: money }),
  restoreNoise: share,
  lookFirstHours: amount,
  outOfScope: z.array(
    z.strictObject({ category: z.string().min(1), caution: z.string().min(1), reason: z.string().min(1) }),
  ),
  repaintedOriginality: share,
  suspiciousBelow: share,
  assumedAbove: share,
  missingParts: z.record(z.enum(ATTRIBUTE_VALUES.completeness), partIds),
  huntMinutesPerMissingPart: amount,
  stopRule: z
    .strictObject({ stepMinutes: z.number().positive(), mostMinutes: z.number().positive() })
    .refine(({ stepMinutes, mostMinutes }) => mostMinutes % stepMinutes === 0, {
      error: "mostMinutes a multiple of stepMinutes",
    }),
}) satisfies z.ZodType<Defaults>;
