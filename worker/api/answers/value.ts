import * as z from "zod";
import type { Appraisal } from "../../engine/decision/appraisal.ts";
import type { ValuationAnswer } from "../../engine/decision/valueFind.ts";
import { currency } from "../schemas/currency.ts";
import { id, valueBand, words } from "./figures.ts";
import { pieces } from "./pieces.ts";

/** Where an answer with money in it comes from. */
export const source = {
  currency,
  dataVersion: z.string().min(1).describe("Hash of the tables the answer comes from"),
  demoData: z.literal(true).describe("Prices and chances come from invented demo data"),
};

/** What it would sell for in each state, and why; null when stopped. */
export const value = z
  .strictObject({
    asFound: valueBand,
    madeSafe: valueBand.nullable().describe("Null where nothing can make the bicycle rideable"),
    restored: valueBand.nullable().describe("Null where nothing can make the bicycle rideable"),
    parts: valueBand,
    pieces,
    drivers: z
      .array(z.strictObject({ term: words, factor: z.number().positive() }))
      .describe("What multiplies the value of the plain reference bicycle"),
    extrapolates: z.boolean().describe("Unlike anything in the data, so the bands are wide"),
  })
  .nullable()
  .describe("Null when stopped") satisfies z.ZodType<Appraisal["value"]>;

/** The answer of POST /v1/valuations. */
export const valuationAnswer = z.strictObject({
  ...source,
  value,
  stop: id.nullable().describe("Id of the caution that stops everything; then no figure is given"),
}) satisfies z.ZodType<ValuationAnswer>;
