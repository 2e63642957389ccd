import * as z from "zod";
import { OBJECTIVES } from "../../engine/portfolio/comparison.ts";
import { COURSES } from "../../engine/service/operation.ts";
import { money } from "./amounts.ts";
import type { Vocabulary } from "./appraisalRequest.ts";
import { comparables } from "./comparables.ts";
import { currency } from "./currency.ts";
import { currencyFaults } from "./currencyFaults.ts";
import { find } from "./find.ts";
import { observations } from "./observations.ts";
import { workshop } from "./workshop.ts";

export const MOST_FINDS = 200;
/** A year without a night's rest: beyond it there is no limit to speak of. */
const MOST_HOURS = 10_000;
const MOST_SLOTS = 10_000;
/** Each find is priced by each of the prices that it takes in: two hundred finds by a hundred, ten finds by two thousand. */
const MOST_READINGS = 20_000;

const budgets = z
  .strictObject({
    hours: z.number().min(0).max(MOST_HOURS).nullable().optional().describe("Hours of your own"),
    cash: money.nullable().optional(),
    slots: z.int().min(0).max(MOST_SLOTS).nullable().optional().describe("Places on the floor"),
  })
  .describe("What there is for all of them together; null or absent: no limit");

/** The fields of the whole request, and the entry of one find. */
export function comparisonSchemas({ checks, parts, operations, tools, currency: tables }: Vocabulary) {
  const entry = z.strictObject({
    find: find({ parts, operations }),
    observations: observations(checks).default({}),
    comparables: comparables("Prices that bear on this find alone, beside the request's own"),
    month: z.int().min(1).max(12).optional().describe("Month of its sale, where it is not the workshop's"),
    course: z
      .enum(COURSES)
      .nullable()
      .optional()
      .describe("The course it takes in any case; null or absent: open"),
  });
  const frame = {
    currency: currency.optional(),
    comparables: comparables("Prices you know of, for every find"),
    workshop: workshop(parts, tools).optional(),
    budgets: budgets.optional(),
    objective: z
      .enum(OBJECTIVES)
      .optional()
      .describe("netBenefit, the margin less your goal for each hour, unless it says margin"),
  };
  const finds = <Entry extends z.ZodType>(one: Entry) =>
    z.array(one).min(1).max(MOST_FINDS).describe("The finds; two may not share an id");
  return {
    entry,
    /** As the document shows it. */
    documented: z.strictObject({ ...frame, finds: finds(entry) }),
    /** As it is parsed first: each find is parsed on its own, so that one bad find does not cost the others their answer. */
    parsed: z.strictObject({ ...frame, finds: finds(z.unknown()) }).superRefine((request, context) => {
      for (const fault of currencyFaults({ ...request, tables }))
        context.addIssue({ code: "custom", ...fault });
      const readings = readingsIn(request);
      if (readings <= MOST_READINGS) return;
      const message = `comparables come to ${readings} readings, each price once for each find that takes it in: at most ${MOST_READINGS} are worked out at once, so leave out the oldest or ask about fewer finds`;
      context.addIssue({ code: "custom", path: ["comparables"], message });
    }),
  };
}

/** How often a price is read: the request's own for every find, a find's own for it. Finds are not parsed yet. */
function readingsIn(request: {
  readonly comparables?: readonly unknown[] | undefined;
  readonly finds: readonly unknown[];
}): number {
  const own = request.finds.reduce<number>((sum, entry) => {
    const listed =
      typeof entry === "object" && entry !== null && "comparables" in entry ? entry.comparables : [];
    return sum + (Array.isArray(listed) ? listed.length : 0);
  }, 0);
  return own + request.finds.length * (request.comparables?.length ?? 0);
}

export type ComparisonSchemas = ReturnType<typeof comparisonSchemas>;
export type ParsedComparison = z.output<ComparisonSchemas["parsed"]>;
export type ParsedEntry = z.output<ComparisonSchemas["entry"]>;
