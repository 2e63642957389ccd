import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type * as z from "zod";
import { appraisalAnswer } from "../../worker/api/answers/appraisal.ts";
import { findingsAnswer } from "../../worker/api/answers/inspection.ts";
import { sellingPlanAnswer } from "../../worker/api/answers/sellingPlan.ts";
import { valuationAnswer } from "../../worker/api/answers/value.ts";
import { anyRequest } from "./anyRequest.ts";
import { anySale } from "./anySale.ts";
import { ask } from "./ask.ts";
import { problemIn } from "./problemIn.ts";
import { spoilt } from "./spoilt.ts";

const ROUTES: readonly [string, z.ZodType, fc.Arbitrary<unknown>][] = [
  ["/v1/findings", findingsAnswer, anyRequest],
  ["/v1/valuations", valuationAnswer, anyRequest],
  ["/v1/appraisals", appraisalAnswer, anyRequest],
  ["/v1/selling-plans", sellingPlanAnswer, anySale],
];

/** Sends a text; the answer is the route's, closed and without holes, or problem details that say what to change. */
async function answeredOrRefused(path: string, schema: z.ZodType, text: string): Promise<number> {
  const headers = { "Content-Type": "application/json" };
  const answer = await ask(path, { method: "POST", headers, body: text });
  if (answer.status === 200) {
    const json = await answer.json();
    expect(schema.parse(json)).toEqual(json);
    return 200;
  }
  const problem = await problemIn(answer, answer.status === 400 ? 400 : 422);
  if (answer.status === 422) expect(problem.errors?.length).toBeGreaterThan(0);
  return answer.status;
}

describe("whatever is sent to the routes about one find or its sale", { timeout: 60_000 }, () => {
  test.each(ROUTES)("%s: text is never answered with a failure of ours", async (path, schema) => {
    const text = fc.oneof(fc.string({ maxLength: 200, unit: "binary" }), fc.json());
    await fc.assert(
      fc.asyncProperty(text, async (body) => {
        expect(await answeredOrRefused(path, schema, body)).not.toBe(200);
      }),
      { numRuns: 50 },
    );
  });

  test.each(ROUTES)(
    "%s: a request whose fields are right is answered, or refused with its pointer",
    async (path, schema, any) => {
      await fc.assert(
        fc.asyncProperty(any, async (body) => {
          await answeredOrRefused(path, schema, JSON.stringify(body));
        }),
        { numRuns: 50 },
      );
    },
  );

  test.each(ROUTES)(
    "%s: a request spoilt in places is answered, or refused with its pointers",
    async (path, schema, any) => {
      await fc.assert(
        fc.asyncProperty(spoilt(any), async (body) => {
          await answeredOrRefused(path, schema, JSON.stringify(body) ?? "");
        }),
        { numRuns: 100 },
      );
    },
  );

  test("three in ten requests whose fields are right are answered: the generators are no straw men", async () => {
    for (const [path, schema, any] of [ROUTES[0]!, ROUTES.at(-1)!]) {
      const statuses = await Promise.all(
        fc.sample(any, { numRuns: 40, seed: 1 }).map(async (body) => {
          return answeredOrRefused(path, schema, JSON.stringify(body));
        }),
      );
      expect(statuses.filter((status) => status === 200).length).toBeGreaterThanOrEqual(12);
    }
  });
});
