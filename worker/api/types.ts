import type * as z from "zod";
import type { AppraisalRequestSchema } from "./schemas/appraisalRequest.ts";
import type { ComparisonSchemas } from "./schemas/comparisonRequest.ts";
import type { SellingRequestSchema } from "./schemas/sellingRequest.ts";

/**
 * What the API takes and answers, as types alone: whoever talks to it imports this and compiles nothing of the engine.
 */

/** The body of POST /v1/findings, /v1/valuations and /v1/appraisals. */
export type AppraisalBody = z.input<AppraisalRequestSchema>;

/** The body of POST /v1/comparisons. */
export type ComparisonBody = z.input<ComparisonSchemas["documented"]>;

/** The body of POST /v1/selling-plans. */
export type SellingBody = z.input<SellingRequestSchema>;

export type { AttributeDefault, AttributeName, Condition } from "../engine/bicycle.ts";
export type {
  Appraisal,
  BoughtPart,
  CourseOutcome,
  Decision,
  PlannedOperation,
  PlannedPart,
  RaisedCaution,
  ReportedFinding,
  ReportedPlan,
  Spread,
  StopLimit,
  ValueBand,
} from "../engine/decision/appraisal.ts";
export type { Defaults } from "../engine/decision/catalogue.ts";
export type { FindingsAnswer } from "../engine/decision/inspectFind.ts";
export type { LookingOn, LookList, NextCheck } from "../engine/decision/looking/nextCheck.ts";
export type { Sensitivity } from "../engine/decision/sensitivity.ts";
export type { ValuationAnswer } from "../engine/decision/valueFind.ts";
export type { Check, Level, MeasuredInput, Measurement, Threshold } from "../engine/inspection/check.ts";
export type { Factor as HistoryFactor } from "../engine/inspection/history/factor.ts";
export type { MarkedTyre } from "../engine/inspection/markedTyre.ts";
export type { Observation, Observations, Reading } from "../engine/inspection/observation.ts";
export type { Budgets, ComparedFind, MeritEntry, Objective } from "../engine/portfolio/comparison.ts";
export type { WholeState } from "../engine/selling/demand/sellingTables.ts";
export type { OfferAnswer, PlannedWeek, SellingPlan } from "../engine/selling/sellingPlan.ts";
export type { CourseId } from "../engine/service/operation.ts";
export type { ComparisonAnswer, FindProblem } from "./comparisonAnswer.ts";
export type { FieldError, Problem } from "./problem.ts";
export type { Choice, Reference } from "./reference/reference.ts";
