import type * as z from "zod";
import { appraisalAnswer } from "../answers/appraisal.ts";
import { check } from "../answers/check.ts";
import { comparedFind, comparisonAnswer } from "../answers/comparison.ts";
import { attributeDefault, condition } from "../answers/condition.ts";
import { course } from "../answers/course.ts";
import { decision } from "../answers/decision.ts";
import { defaults } from "../answers/defaults.ts";
import { spread, valueBand } from "../answers/figures.ts";
import { finding, mismatch } from "../answers/finding.ts";
import { caution, findingsAnswer } from "../answers/inspection.ts";
import { measurement } from "../answers/measurement.ts";
import { nextCheck } from "../answers/nextChecks.ts";
import { plan, plannedOperation, plannedPart } from "../answers/plan.ts";
import { problemAnswer } from "../answers/problem.ts";
import { referenceAnswer } from "../answers/reference.ts";
import { plannedWeek, sellingPlanAnswer } from "../answers/sellingPlan.ts";
import { sellingTables } from "../answers/sellingTables.ts";
import { valuationAnswer } from "../answers/value.ts";
import { observation, reading } from "../schemas/observations.ts";

const ANSWERS: Readonly<Record<string, z.ZodType>> = {
  Appraisal: appraisalAnswer,
  AttributeDefault: attributeDefault,
  Caution: caution,
  Check: check,
  ComparedFind: comparedFind,
  Comparison: comparisonAnswer,
  Condition: condition,
  Course: course,
  Decision: decision,
  Defaults: defaults,
  Finding: finding,
  Findings: findingsAnswer,
  Measurement: measurement,
  Mismatch: mismatch,
  NextCheck: nextCheck,
  Plan: plan,
  PlannedOperation: plannedOperation,
  PlannedPart: plannedPart,
  PlannedWeek: plannedWeek,
  Problem: problemAnswer,
  Reference: referenceAnswer,
  SellingPlan: sellingPlanAnswer,
  SellingTables: sellingTables,
  Spread: spread,
  Valuation: valuationAnswer,
  ValueBand: valueBand,
};

/** The schemas of what comes in that are made from the tables. */
export interface RequestSchemas {
  readonly appraisal: z.ZodType;
  readonly comparison: z.ZodType;
  readonly comparisonEntry: z.ZodType;
  readonly selling: z.ZodType;
}

/** The schemas that have a name in the document, by direction: what comes in, what goes out. */
export function namedSchemas(
  requests: RequestSchemas,
): Record<"input" | "output", ReadonlyMap<z.ZodType, string>> {
  const input: [z.ZodType, string][] = [
    [requests.appraisal, "AppraisalRequest"],
    [requests.comparison, "ComparisonRequest"],
    [requests.comparisonEntry, "ComparisonEntry"],
    [requests.selling, "SellingRequest"],
    [observation, "Observation"],
    [reading, "Reading"],
  ];
  const output = Object.entries(ANSWERS).map(([name, schema]): [z.ZodType, string] => [schema, name]);
  return { input: new Map(input), output: new Map(output) };
}
