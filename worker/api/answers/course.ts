import * as z from "zod";
import type { CourseOutcome } from "../../engine/decision/appraisal.ts";
import { COURSES } from "../../engine/service/operation.ts";
import { money, share, spread, words } from "./figures.ts";
import { plan } from "./plan.ts";

export const courseId = z.enum(COURSES);
const TWENTIETHS = 20;

/** What one course of action comes to. All figures are null where it is not available. */
export const course = z.strictObject({
  course: courseId,
  available: z.boolean(),
  unavailableBecause: words.exactOptional(),
  margin: spread
    .extend({
      twentieths: z
        .array(money)
        .length(TWENTIETHS)
        .describe("20 quantiles, at 2.5, 7.5, ... 97.5 %: one for each of 20 equally likely outcomes"),
    })
    .nullable()
    .describe("Money left after everything but one's own time"),
  hours: spread.nullable().describe("Hours still to do"),
  marginPerHour: z
    .strictObject({
      rate: money.describe("Expected margin over expected hours: the long-run rate of repeated flips"),
      p10: money,
      p90: money,
    })
    .nullable()
    .describe(
      "Money an hour; p10 and p90 are of the realised ratio. Null for leave, and where no hours are left to work",
    ),
  addedMarginPerAddedHour: money
    .nullable()
    .describe("What the added hours earn over the next shorter course worth comparing"),
  lossProbability: share.nullable(),
  belowGoalProbability: share.nullable(),
  netBenefit: money.nullable().describe("Expected margin less the hourly goal for each expected hour"),
  rightToChange: money
    .nullable()
    .describe(
      "What the right to change course at a discovery adds to the net benefit; null where nothing can be discovered on the way",
    ),
  cashNeeded: money.nullable(),
  elapsedDays: z
    .number()
    .min(0)
    .nullable()
    .describe("Days from now until it is gone on average: parts waited for, evenings of work, and the sale"),
  sale: z
    .strictObject({
      weeks: z.number().min(0).describe("From listing until it is gone, by sale or fallback, on average"),
      takings: money.describe("Expected takings after haggling, fee and packing, the fallback counted"),
    })
    .nullable()
    .describe(
      "What comes of the sale at the prices of the course's selling plan (/v1/selling-plans); null where the bike is not sold whole",
    ),
  plan: plan.nullable(),
}) satisfies z.ZodType<CourseOutcome>;
