import * as z from "zod";
import type {
  PlannedOperation,
  PlannedPart,
  ReportedPlan,
  StopLimit,
} from "../../engine/decision/appraisal.ts";
import { id, ids, minutes, money, share, spread, words } from "./figures.ts";

/** Something to buy. */
export const plannedPart = z.strictObject({
  part: id,
  name: words,
  unit: words,
  quantity: z.number().positive(),
  price: money.describe(
    "Expected price of one; in a job's parts, what is at hand counts what it would be worth unused",
  ),
  kind: z.enum(["part", "consumable", "service", "tool", "delivery"]),
}) satisfies z.ZodType<PlannedPart>;

/** One job of the plan. */
export const plannedOperation = z.strictObject({
  operation: id,
  name: words,
  position: z.enum(["bike", "front", "rear", "both"]),
  minutes: minutes.describe("Expected hands-on minutes at the user's speed, without shared steps"),
  parts: z.array(plannedPart),
  because: ids.describe("Checks whose findings call for it"),
  kind: z.enum(["required", "needed", "optional"]),
  assumed: z.boolean().describe("From an unseen fault that is likelier than not"),
  doneBy: z.enum(["self", "service", "mechanic"]),
  torque: z
    .strictObject({ from: z.number(), to: z.number(), of: words })
    .nullable()
    .describe("Customary torque, N m; the marked value rules"),
  proof: words.describe("The check that proves it done"),
  redecide: z.boolean().describe("A moment to choose the course again"),
}) satisfies z.ZodType<PlannedOperation>;

/** When to give up on a part that may never come free. */
export const stopLimit = z.strictObject({
  operation: id,
  name: words,
  minutes: minutes.describe(
    "Hands-on minutes at the user's speed after which another quarter of an hour costs more than it is worth",
  ),
  releaseChance: share.describe("Chance that it is free by then"),
  fallback: money.describe(
    "Net benefit at the goal of the cheapest way to go on without it, against having it free: not above 0",
  ),
}) satisfies z.ZodType<StopLimit>;

/** The work of a course. */
export const plan = z.strictObject({
  operations: z.array(plannedOperation).describe("In working order"),
  sharedSteps: z
    .array(z.strictObject({ step: id, name: words, minutes }))
    .describe("Dismantling that several jobs share, counted once"),
  shoppingList: z.array(plannedPart).describe("What is still to be bought"),
  minutes: spread.describe("Minutes of the shown plan"),
  cost: spread.describe(
    "Still to be paid for parts, consumables, services, tools and delivery of the shown plan; purchase apart",
  ),
  allowance: z
    .strictObject({ money, minutes })
    .describe("Expected work on faults not yet seen and on jobs that may fail, beyond the shown plan"),
  disclosed: ids.describe("Checks whose faults are left and told to the buyer"),
  stopLimits: z.array(stopLimit).describe("For each job of the plan whose end is open, in working order"),
}) satisfies z.ZodType<ReportedPlan>;
