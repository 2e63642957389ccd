import * as z from "zod";
import type { Defaults } from "../../engine/decision/catalogue.ts";
import { currency } from "../schemas/currency.ts";
import { courseId } from "./course.ts";
import { id, ids, minutes, money, share, words } from "./figures.ts";

const priceRange = z.strictObject({ low: money, typical: money, high: money });

/** What stands in for what a request leaves out. */
export const defaults = z.strictObject({
  currency,
  hourlyGoal: money,
  goalsUpTo: money.describe("Highest hourly goal for which a course is told, at price level 1"),
  skill: z.literal([1, 2, 3, 4]),
  speedFactor: z.number(),
  speedSpread: z.number().describe("Standard deviation of the logarithm of the speed factor"),
  fee: z.strictObject({ rate: share, fixed: money }),
  packing: money,
  priceLevel: z.number(),
  haggling: z
    .strictObject({ asFound: share, rideable: share })
    .describe("Share that a buyer talks off the going rate"),
  delivery: z.strictObject({ perOrder: priceRange, orders: z.record(courseId, z.number()) }),
  calendar: z.strictObject({
    partsWaitDays: z.number(),
    hoursPerEvening: z.number(),
    sellingDays: z.number(),
  }),
  desirability: share,
  originality: share,
  purchase: z.strictObject({ price: money, paid: z.boolean(), travelMinutes: minutes, travelCost: money }),
  lookFirstHours: z
    .number()
    .min(0)
    .describe("A check goes before the course where it gains at least so many hours at the goal"),
  restoreNoise: share.describe(
    "Restore must beat make safe by one hour's goal or this share of the restored value, whichever is larger",
  ),
  outOfScope: z
    .array(z.strictObject({ category: id, caution: id, reason: words }))
    .describe("Kinds that are not appraised"),
  repaintedOriginality: share.describe("Originality of a bicycle painted over"),
  suspiciousBelow: share.describe(
    "An asking price below this share of the value as found raises the question of ownership",
  ),
  assumedAbove: share.describe("An unseen fault likelier than this stands in the shown plan"),
  missingParts: z
    .record(z.string(), ids)
    .describe("Parts taken for missing where none are named, by completeness"),
  huntMinutesPerMissingPart: minutes,
  stopRule: z
    .strictObject({
      stepMinutes: minutes.describe("Whether freeing a part still pays is asked so often"),
      mostMinutes: minutes.describe("It is given up then in any case"),
    })
    .describe("When to give up on a part that may never come free"),
}) satisfies z.ZodType<Defaults>;
