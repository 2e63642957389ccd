import * as z from "zod";
import type { Decision } from "../../engine/decision/appraisal.ts";
import { courseId } from "./course.ts";
import { id, money, share, words } from "./figures.ts";

/** What to do with it, and why. */
export const decision = z.strictObject({
  course: courseId,
  lookFirst: id.nullable().describe("Id of a check or test that is worth more than deciding now"),
  stop: id.nullable().describe("Id of the caution that stops everything; then no figure is given"),
  reasons: z.array(words),
  walkAwayPrice: money
    .min(0)
    .nullable()
    .describe("Highest purchase price worth paying; null once paid or stopped; 0: not even for nothing"),
  breakEvenSalePrice: money
    .nullable()
    .describe("Price received at which the expected margin is nought; null for leave and when stopped"),
  confidence: share
    .nullable()
    .describe(
      "Share of the ways it can turn out in which the course is best with hindsight; null when stopped",
    ),
  perfectInformation: money
    .min(0)
    .nullable()
    .describe("What knowing everything beforehand would add to the net benefit; null when stopped"),
  goalsAtWhichItFlips: z
    .array(z.number().min(0))
    .describe("Hourly goals at which another course becomes best, rising"),
  courseByGoal: z
    .array(z.strictObject({ fromGoal: z.number().min(0), course: courseId }))
    .describe("The best course from each hourly goal on, rising from 0"),
}) satisfies z.ZodType<Decision>;
