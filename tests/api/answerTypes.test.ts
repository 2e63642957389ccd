import { describe, expectTypeOf, test } from "vitest";
import type * as z from "zod";
import type { appraisalAnswer } from "../../worker/api/answers/appraisal.ts";
import type { comparisonAnswer } from "../../worker/api/answers/comparison.ts";
import type { findingsAnswer } from "../../worker/api/answers/inspection.ts";
import type { referenceAnswer } from "../../worker/api/answers/reference.ts";
import type { sellingPlanAnswer } from "../../worker/api/answers/sellingPlan.ts";
import type { valuationAnswer } from "../../worker/api/answers/value.ts";
import type {
  Appraisal,
  ComparisonAnswer,
  FindingsAnswer,
  Reference,
  SellingPlan,
  ValuationAnswer,
} from "../../worker/api/types.ts";

/** A type as JSON has it: nothing is read-only there. */
type Plain<T> = T extends object ? { -readonly [Key in keyof T]: Plain<T[Key]> } : T;

describe("the schemas of the answers say exactly what the types say (checked by the type checker)", () => {
  test("POST /v1/findings", () => {
    expectTypeOf<Plain<FindingsAnswer>>().toExtend<z.output<typeof findingsAnswer>>();
  });
  test("POST /v1/valuations", () => {
    expectTypeOf<Plain<ValuationAnswer>>().toExtend<z.output<typeof valuationAnswer>>();
  });
  test("POST /v1/appraisals", () => {
    expectTypeOf<Plain<Appraisal>>().toExtend<z.output<typeof appraisalAnswer>>();
  });
  test("POST /v1/comparisons", () => {
    expectTypeOf<Plain<ComparisonAnswer>>().toExtend<z.output<typeof comparisonAnswer>>();
  });
  test("POST /v1/selling-plans", () => {
    expectTypeOf<Plain<SellingPlan>>().toExtend<z.output<typeof sellingPlanAnswer>>();
  });
  test("GET /v1/reference", () => {
    expectTypeOf<Plain<Reference>>().toExtend<z.output<typeof referenceAnswer>>();
  });
});
