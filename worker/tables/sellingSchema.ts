import * as z from "zod";
import { ATTRIBUTE_VALUES } from "../engine/bicycle.ts";
import type { SellingTables, WholeState } from "../engine/selling/demand/sellingTables.ts";
import { category } from "./words.ts";

const STATES = ["asFound", "madeSafe", "restored"] as const satisfies WholeState[];
const positive = z.number().positive();
const share = z.number().min(0).max(1);
/** Floating sums of decimal figures. */
const ROUNDING = 1e-9;
/** A plan is worked out week by week: two years of them. */
const MOST_WEEKS = 104;

const priceSteps = z
  .array(z.strictObject({ below: positive, step: positive }))
  .min(2)
  .refine((rows) => rows.every(({ below }, at) => at === 0 || below > rows[at - 1]!.below), {
    error: "below rising from row to row",
  })
  .refine((rows) => rows.every(({ below, step }) => isMultiple(below, step)), {
    error: "each below a multiple of its step",
  })
  .refine((rows) => rows.length < 3 || near(rows.at(-1)!.below, 10 * rows.at(-3)!.below), {
    error: "last two rows that span a factor of ten: they come again ten times as large",
  });

function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= ROUNDING * other;
}

function isMultiple(amount: number, step: number): boolean {
  return near(Math.round(amount / step) * step, amount);
}

/** What is assumed of buyers and of waiting. Invented figures. */
export const sellingTables = z.strictObject({
  arrivalsPerWeek: positive,
  byCategory: z.record(category.exclude(["e-bike-out-of-scope"]), positive),
  bySize: z.record(z.enum(ATTRIBUTE_VALUES.sizeClass), positive),
  byState: z.record(z.enum(STATES), positive),
  byMonth: z
    .array(positive)
    .length(12)
    .refine(
      (months) =>
        near(
          months.reduce((sum, one) => sum + one, 0),
          12,
        ),
      { error: "a mean of 1" },
    ),
  willingness: z.strictObject({ centre: positive, logSd: positive }),
  weeks: z.int().min(1).max(MOST_WEEKS),
  storagePerWeek: z.number().min(0),
  interestPerYear: share,
  quickSale: z.number().min(0).lt(1),
  priceSteps,
  offers: z.strictObject({ openingBelow: positive, leastChance: share }),
  holdGain: share,
}) satisfies z.ZodType<SellingTables>;
