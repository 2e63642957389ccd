import * as z from "zod";
import { WHOLE_STATES } from "../../engine/selling/demand/sellingTables.ts";
import type { SellingRequest } from "../../engine/selling/sellingRequest.ts";
import { MOST_MONEY, money } from "./amounts.ts";
import type { Vocabulary } from "./appraisalRequest.ts";
import { comparables } from "./comparables.ts";
import { currency } from "./currency.ts";
import { currencyFaults } from "./currencyFaults.ts";
import { find } from "./find.ts";
import { observations } from "./observations.ts";
import { fee, workshop } from "./workshop.ts";

/** Two years: whoever waits longer keeps it. */
const MOST_WEEKS = 104;
/** A crowd at the door every week. */
const MOST_ARRIVALS = 100;
/** One interested buyer in two years. */
const LEAST_ARRIVALS = 0.01;
/** More than that is no haggling. */
const MOST_HAGGLING = 0.9;
const LEAST_PRICE = 0.01;

const price = z.number().min(LEAST_PRICE).max(MOST_MONEY);

const value = z
  .strictObject({ p10: price, p50: price, p90: price })
  .describe("Going rate before haggling in the month of listing: 10, 50 and 90 % points. Or give find");

const market = z
  .strictObject({
    arrivalsPerWeek: z
      .number()
      .min(LEAST_ARRIVALS)
      .max(MOST_ARRIVALS)
      .optional()
      .describe("Interested buyers a week, the seasons averaged; absent: by kind, size and state"),
    weeks: z
      .int()
      .min(1)
      .max(MOST_WEEKS)
      .optional()
      .describe("Weeks after which it goes for the fallback in any case"),
    storagePerWeek: money
      .optional()
      .describe("What a week of room costs: rent, or what else could stand there"),
    fallback: money
      .optional()
      .describe(
        "Money in hand where it has not sold; absent: a quick sale, or its parts where they leave more",
      ),
    haggling: z.number().min(0).max(MOST_HAGGLING).optional().describe("Share that a buyer talks off"),
    fee: fee.optional().describe("Taken off the takings; absent: none, or the workshop's where it names one"),
    month: z
      .int()
      .min(1)
      .max(12)
      .optional()
      .describe("Month of listing, the workshop's unless given; absent from both: the seasons averaged"),
  })
  .describe("Terms of the sale; what is absent stands in GET /v1/reference");

const offer = z
  .strictObject({
    amount: price.describe("Money in hand"),
    week: z.int().min(1).max(MOST_WEEKS).describe("Week of the plan it came in, from 1"),
  })
  .describe("An offer that came");

/** Fields that say something of a find and nothing of a value. */
const OF_FIND = ["observations", "comparables", "workshop", "state"] as const;

/**
 * What POST /v1/selling-plans takes: a going rate, or a find with all that an appraisal takes; never both. What comes out is the engine's own type.
 */
export function sellingRequest({ checks, parts, operations, tools, currency: tables }: Vocabulary) {
  return z
    .strictObject({
      currency: currency.optional(),
      value: value.optional(),
      find: find({ parts, operations }).optional(),
      observations: observations(checks).optional(),
      comparables: comparables("Prices you know of, paid or asked: the value learns from them"),
      workshop: workshop(parts, tools).optional(),
      state: z
        .enum(WHOLE_STATES)
        .optional()
        .describe("State it is sold in; absent: the one that the decided course leads to"),
      market: market.optional(),
      offer: offer.nullable().optional(),
    })
    .superRefine((request, context) => {
      const fault = (path: (string | number)[], message: string) =>
        context.addIssue({ code: "custom", path, message });
      for (const { path, message } of currencyFaults({ ...request, tables })) fault(path, message);
      const { value: band, find: described, market: terms, workshop: shop } = request;
      if (band && described) fault(["value"], "value and find are both given: leave one of them out");
      if (!band && !described)
        fault(["value"], "value is missing: give the going rate, or describe the bicycle in find");
      for (const field of described ? [] : OF_FIND)
        if (request[field] !== undefined)
          fault([field], `${field} says something of a find, and none is given: give find or leave it out`);
      if (band && band.p50 < band.p10) fault(["value", "p50"], `p50 must be at least p10, ${band.p10}`);
      if (band && band.p90 < band.p50) fault(["value", "p90"], `p90 must be at least p50, ${band.p50}`);
      if (terms?.month && shop?.month && terms.month !== shop.month)
        fault(
          ["market", "month"],
          `month is ${terms.month} here and ${shop.month} in the workshop: give one of them, or both alike`,
        );
    })
    .transform((request): SellingRequest => {
      const { value: band, find: described, market: terms = {}, offer: came = null, state } = request;
      const { currency: counted, observations: seen = {}, comparables: known, workshop: shop } = request;
      if (described === undefined)
        return { subject: { value: band!, currency: counted }, market: terms, offer: came };
      const appraisal = {
        currency: counted,
        find: described,
        observations: seen,
        comparables: known,
        // The bicycle is priced for the month it is listed in.
        workshop: terms.month === undefined ? shop : { ...shop, month: terms.month },
      };
      return { subject: { appraisal, state }, market: terms, offer: came };
    });
}

export type SellingRequestSchema = ReturnType<typeof sellingRequest>;
