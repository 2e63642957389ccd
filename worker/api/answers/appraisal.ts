import * as z from "zod";
import type { Appraisal } from "../../engine/decision/appraisal.ts";
import { course } from "./course.ts";
import { decision } from "./decision.ts";
import { inspection } from "./inspection.ts";
import { lookingOn, nextCheck } from "./nextChecks.ts";
import { sensitivity } from "./sensitivity.ts";
import { soFar } from "./soFar.ts";
import { source, value } from "./value.ts";

/** The answer of POST /v1/appraisals: everything about one find. */
export const appraisalAnswer = z.strictObject({
  ...source,
  ...inspection,
  value,
  courses: z
    .array(course)
    .describe("In the order restore, make-safe, sell-as-found, break-for-parts, leave; empty when stopped"),
  decision,
  nextChecks: z
    .array(nextCheck)
    .describe(
      "What may still be looked at, tested or asked, the best net gain a minute first; empty when stopped",
    ),
  lookingOn: lookingOn.nullable().describe("Whether looking on pays; null when stopped"),
  sensitivity: z
    .array(sensitivity)
    .describe("What moves the chosen course, largest swing first; empty for leave and when stopped"),
  soFar,
}) satisfies z.ZodType<Appraisal>;
