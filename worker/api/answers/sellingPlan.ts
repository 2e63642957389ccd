import * as z from "zod";
import { WHOLE_STATES } from "../../engine/selling/demand/sellingTables.ts";
import { FALLBACKS } from "../../engine/selling/demand/wholeSale.ts";
import {
  type MarketTerms,
  OFFER_ANSWERS,
  type OfferAnswer,
  type PlannedWeek,
  type Points,
  type SellingPlan,
  type SoldAs,
} from "../../engine/selling/sellingPlan.ts";
import { ids, money, share, words } from "./figures.ts";
import { source } from "./value.ts";

const month = z.int().min(1).max(12);
const weeks = z.number().min(0).describe("Weeks");

/** 10, 50 and 90 % points of money. */
const points = z
  .strictObject({ p10: money, p50: money, p90: money })
  .describe("10, 50 and 90 % points") satisfies z.ZodType<Points>;

/** One week of a selling plan. */
export const plannedWeek = z.strictObject({
  week: z.int().min(1).describe("From 1, the week it is listed in"),
  price: money.positive().describe("What to ask: a figure people write"),
  chanceSold: share.describe("Chance that it is sold by the end of this week"),
  lowestOffer: money.describe(
    "The lowest offer, money in hand, that is worth more this week than carrying on after hearing it",
  ),
}) satisfies z.ZodType<PlannedWeek>;

const offer = z
  .strictObject({
    answer: z.enum(OFFER_ANSWERS),
    counter: money.positive().nullable().describe("What to ask that buyer; null unless you counter"),
    counterChance: share.nullable().describe("Chance that they pay it; null unless you counter"),
    carryingOn: money.describe(
      "What carrying on is worth after hearing the offer, at the plan's prices or lower ones, whichever are worth more then",
    ),
    reason: words,
    goingRate: points.describe("Going rate as the offer and the weeks without a sale leave it"),
  })
  .describe("What to answer the offer") satisfies z.ZodType<OfferAnswer>;

const market = z
  .strictObject({
    arrivalsPerWeek: z.number().positive().describe("Interested buyers a week, the seasons averaged"),
    weeks: z.int().min(1).describe("Weeks after which it goes for the fallback in any case"),
    storagePerWeek: money.min(0).describe("What a week on the floor costs"),
    haggling: share.describe("Share that a buyer talks off the asking price"),
    fee: z
      .strictObject({ rate: share, fixed: money.min(0) })
      .describe("Taken off the takings; 0 unless given"),
    month: month.nullable().describe("Month of listing; null: the seasons averaged"),
  })
  .describe(
    "The terms of the plan, with what stands in for what was left out",
  ) satisfies z.ZodType<MarketTerms>;

const soldAs = z
  .strictObject({
    state: z.enum(WHOLE_STATES),
    roadworthy: z.boolean().describe("False: it may only be advertised as not roadworthy"),
    blocking: ids.describe("Checks at a level that stops riding, as it stands"),
    owed: ids.describe("Checks to be made before anyone rides"),
  })
  .describe("What the find is sold as") satisfies z.ZodType<SoldAs>;

/** The answer of POST /v1/selling-plans. */
export const sellingPlanAnswer = z.strictObject({
  ...source,
  soldAs: soldAs.nullable().describe("Null where the value was given without a find"),
  value: points.describe("Going rate before haggling, in the month of listing"),
  market,
  listPrice: money.positive().describe("What to ask in the first week"),
  path: z.array(plannedWeek).min(1).describe("Week by week, until it goes for the fallback"),
  expectedTakings: money.describe(
    "After haggling, after fees where they are given, the fallback counted where it has not sold; storage not taken off",
  ),
  takings: points,
  expectedWeeks: weeks.describe("Weeks until it is gone, by sale or fallback"),
  weeks: z.strictObject({ p10: weeks, p50: weeks, p90: weeks }).describe("10, 50 and 90 % points"),
  chanceUnsold: share.describe("Chance that it goes for the fallback"),
  worth: money.describe("Expected takings less storage, discounted: what the plan makes as large as can be"),
  roundingCost: money.min(0).describe("What asking figures that people write takes off that"),
  fallback: z
    .strictObject({ kind: z.enum(FALLBACKS), amount: money })
    .describe("What is done where it has not sold, and what it brings then, on average"),
  offer: offer.nullable().describe("Null where none was named"),
  holdUntil: z
    .strictObject({ month, gain: money.positive() })
    .nullable()
    .describe(
      "The month to list it in instead, and what that adds after storage; null where no month is given or waiting does not pay",
    ),
}) satisfies z.ZodType<SellingPlan>;
