import * as z from "zod";
import { ATTRIBUTE_VALUES } from "../../engine/bicycle.ts";
import { type SellingTables, WHOLE_STATES } from "../../engine/selling/demand/sellingTables.ts";
import { money, share } from "./figures.ts";

const factor = z.number().positive();

/** What a selling plan assumes of buyers and of waiting. */
export const sellingTables = z.strictObject({
  arrivalsPerWeek: factor.describe(
    "Interested buyers a week for a kind of middling demand, in a middle size, that rides, the seasons averaged",
  ),
  byCategory: z.record(z.string(), factor).describe("Multiplies them, by kind"),
  bySize: z.record(z.enum(ATTRIBUTE_VALUES.sizeClass), factor),
  byState: z.record(z.enum(WHOLE_STATES), factor),
  byMonth: z.array(factor).length(12).describe("By month, January first; on average 1"),
  willingness: z
    .strictObject({ centre: factor, logSd: factor })
    .describe(
      "Asking price over going rate that the median buyer takes, and the standard deviation of its logarithm among buyers",
    ),
  weeks: z.int().min(1).describe("Weeks after which it goes for the fallback"),
  storagePerWeek: money.describe("What a week on the floor costs, at price level 1"),
  interestPerYear: share,
  quickSale: share.describe(
    "What a quick sale brings in hand, as a share of what the going rate leaves after the usual haggling",
  ),
  priceSteps: z
    .array(z.strictObject({ below: factor, step: factor }))
    .describe(
      "Asking prices below an amount are multiples of the step; above, the last two rows come again ten times as large",
    ),
  offers: z.strictObject({
    openingBelow: factor.describe(
      "By how much a first offer lies below what the buyer would pay, as a mean logarithm",
    ),
    leastChance: share.describe("A counter that is less likely to be taken is not made"),
  }),
  holdGain: share.describe("Waiting for another month must add more than this share of the plan's worth"),
}) satisfies z.ZodType<SellingTables>;
