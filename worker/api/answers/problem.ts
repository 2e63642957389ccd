import * as z from "zod";
import type { Problem } from "../problem.ts";

const fieldError = z.strictObject({
  pointer: z.string().describe("Where the field stands in the body (RFC 6901)"),
  message: z.string().describe("What is wrong and what to change"),
  allowed: z
    .array(z.union([z.string(), z.number(), z.boolean(), z.null()]))
    .exactOptional()
    .describe("What would be accepted, where that is a list"),
});

/** Problem details (RFC 9457), as every failing route answers. */
export const problemAnswer = z.strictObject({
  type: z.string(),
  title: z.string(),
  status: z.int().min(400).max(599),
  detail: z.string(),
  errors: z.array(fieldError).exactOptional(),
}) satisfies z.ZodType<Problem>;
