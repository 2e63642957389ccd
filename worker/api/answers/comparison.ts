import * as z from "zod";
import { BUDGETS, type Comparison, type MeritEntry, OBJECTIVES } from "../../engine/portfolio/comparison.ts";
import type { ComparisonAnswer } from "../comparisonAnswer.ts";
import { course, courseId } from "./course.ts";
import { decision } from "./decision.ts";
import { id, money, share, words } from "./figures.ts";
import { caution, inspection } from "./inspection.ts";
import { problemAnswer } from "./problem.ts";
import { soFar } from "./soFar.ts";
import { source, value } from "./value.ts";

const hours = z.number().min(0).describe("Hours");
const slots = z.int().min(0).describe("Places on the floor");
const cash = money.min(0);
const label = id.describe("The find's label; its pointer in the request where it has none");

/** One find beside the others. */
export const comparedFind = z.strictObject({
  id: label,
  decision,
  courses: z.array(course.omit({ plan: true })).describe("As in an appraisal, without the plan"),
  value: value
    .unwrap()
    .omit({ pieces: true, comparables: true })
    .nullable()
    .describe("As in an appraisal, without pieces and comparables; null when stopped"),
  looked: inspection.looked,
  readiness: inspection.readiness,
  hidden: inspection.hidden,
  soFar,
  cautions: z.array(caution),
  unconverted: source.unconverted,
});

const refusedFind = z
  .strictObject({ id: label, problem: problemAnswer })
  .describe("A find that cannot be worked out; the others are answered");

const chosenCourse = { id: label, course: courseId };
const needs = z.strictObject({ hours, cash, slots });

const total = z
  .strictObject({
    netBenefit: money,
    margin: money.describe("Expected margin of the whole set"),
    marginP10: money.describe("10 % point of the set's margin: prices move together as far as a market does"),
    marginP90: money.describe("90 % point of the set's margin"),
    hours: hours.describe("Expected hours of the whole set"),
    hoursP10: hours,
    hoursP50: hours,
    hoursP80: hours.describe("Hours within which the set is done in 8 of 10"),
    hoursP90: hours,
    cash,
    slots,
  })
  .describe(
    "Over all finds; those that are left count with what leaving them costs, and use nothing",
  ) satisfies z.ZodType<Comparison["total"]>;

const shadowPrices = z
  .strictObject({
    hour: money.min(0).describe("What one more hour adds to the total"),
    cash: money.min(0).describe("What one more unit of money adds"),
    slot: money.min(0).describe("What one more place adds"),
  })
  .describe(
    "By choosing anew with one more of each, as far as the search reaches: never too much",
  ) satisfies z.ZodType<Comparison["shadowPrices"]>;

const meritEntry = z.strictObject({
  ...chosenCourse,
  hours,
  marginPerHour: money.describe("Expected margin over expected hours"),
  chosen: z.boolean(),
}) satisfies z.ZodType<MeritEntry>;

const overrun = z
  .strictObject({
    budget: z.enum(BUDGETS),
    given: z.number().min(0),
    needs: z.number().min(0),
    short: z.number().positive(),
    freeing: z.array(label).describe("Finds any one of which, set free, lets the others fit"),
    explanation: words,
  })
  .describe("A budget that the courses taken in any case overrun");

/** The answer of POST /v1/comparisons. */
export const comparisonAnswer = z.strictObject({
  currency: source.currency,
  dataVersion: source.dataVersion,
  demoData: source.demoData,
  objective: z.enum(OBJECTIVES).describe("What was maximised"),
  budgets: z
    .strictObject({ hours: hours.nullable(), cash: cash.nullable(), slots: slots.nullable() })
    .describe("null: no limit"),
  finds: z.array(z.union([comparedFind, refusedFind])).describe("In the order of the request"),
  chosen: z
    .array(z.strictObject(chosenCourse))
    .describe("The finds to take and their courses, by margin an hour; those that are left are not in it"),
  total: total.nullable().describe("Null where the courses taken in any case do not fit"),
  chanceHoursOverrun: share
    .nullable()
    .describe("Chance that the set takes more hours than there are: budgets hold in expectation"),
  shadowPrices: shadowPrices.nullable(),
  nextIn: z
    .strictObject({ ...chosenCourse, needs })
    .nullable()
    .describe(
      "The find that would come in next, and what is lacking to take it as well; null where none would pay",
    ),
  proven: z.boolean().describe("No set that fits is worth more"),
  gap: money.min(0).describe("What a set could be worth more at most; 0 where proven"),
  meritOrder: z.array(meritEntry).describe("The finds by margin an hour, highest first"),
  overruns: z.array(overrun).describe("Why no set fits; empty where one does"),
}) satisfies z.ZodType<ComparisonAnswer>;
