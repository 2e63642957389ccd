import * as z from "zod";
import type { Appraisal, ReportedComparable } from "../../engine/decision/appraisal.ts";
import type { ValuationAnswer } from "../../engine/decision/valueFind.ts";
import { currency } from "../schemas/currency.ts";
import { id, money, share, valueBand, words } from "./figures.ts";
import { pieces } from "./pieces.ts";

/** Where an answer with money in it comes from. */
export const source = {
  currency,
  dataVersion: z.string().min(1).describe("Hash of the tables the answer comes from"),
  demoData: z.literal(true).describe("Prices and chances come from invented demo data"),
  unconverted: z
    .boolean()
    .describe(
      "The demo prices are in another currency, and workshop.priceLevel does not say how prices compare",
    ),
};

const ends = z.strictObject({ p10: money, p90: money }).describe("10 and 90 % points");
const valuedState = z.enum(["asFound", "madeSafe"]);

const comparable = z
  .strictObject({
    id: id.nullable().describe("Your label"),
    goingRate: money.describe(
      "Its price as a going rate: a price paid brought up by what haggling took off, an asking price down by askedFactor",
    ),
    says: money.describe("What this bicycle would fetch if it sold as that one did"),
    before: money.describe("Median without it"),
    after: money.describe("Median with it"),
    weight: z.number().describe("Its share in the logarithm of the median"),
    surprising: z.boolean().describe("Far from what all else says: look at price and description again"),
  })
  .describe("What one of your own prices does to the estimate") satisfies z.ZodType<ReportedComparable>;

/** What it would sell for in each state, and why; null when stopped. */
export const value = z
  .strictObject({
    asFound: valueBand,
    madeSafe: valueBand.nullable().describe("Null where nothing can make the bicycle rideable"),
    restored: valueBand.nullable().describe("Null where nothing can make the bicycle rideable"),
    parts: valueBand,
    referencePrice: money.describe("Median of the plain reference bicycle, which the drivers multiply"),
    pieces,
    drivers: z
      .array(z.strictObject({ term: words, factor: z.number().positive() }))
      .describe("What multiplies the value of the plain reference bicycle"),
    extrapolates: z.boolean().describe("Unlike anything in the data, so the bands are wide"),
    comparables: z.array(comparable).describe("Your own prices, in the order of the request"),
    ownShare: share.describe(
      "Share of the estimate that rests on your own prices, the rest on invented ones",
    ),
    askedFactor: z.number().positive().describe("Asking prices over going rates, as far as is known"),
    threeMore: z
      .strictObject({ state: valuedState, now: ends, after: ends })
      .describe("The range now, and with three more sales of the kind at the price expected"),
  })
  .nullable()
  .describe("Null when stopped") satisfies z.ZodType<Appraisal["value"]>;

/** The answer of POST /v1/valuations. */
export const valuationAnswer = z.strictObject({
  ...source,
  value,
  stop: id.nullable().describe("Id of the caution that stops everything; then no figure is given"),
}) satisfies z.ZodType<ValuationAnswer>;
