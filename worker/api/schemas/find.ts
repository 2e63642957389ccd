import * as z from "zod";
import { ATTRIBUTE_VALUES, type AttributeName, ERAS } from "../../engine/bicycle.ts";
import type { AppraisalRequest } from "../../engine/decision/appraisalRequest.ts";
import type { DescribedAttributes } from "../../engine/inspection/find.ts";
import { minutes, money, share } from "./amounts.ts";
import { attributes } from "./attributes.ts";
import { eraOfYear } from "./eraOfYear.ts";

const ATTRIBUTE_NAMES = Object.keys(ATTRIBUTE_VALUES) as readonly AttributeName[];

const purchase = z
  .strictObject({
    price: money.optional(),
    paid: z.boolean().optional().describe("Paid already: then the price is sunk"),
    travelMinutes: minutes.optional().describe("Minutes to fetch it, there and back"),
    travelCost: money.optional(),
  })
  .describe("What it costs to have it");

/** Nobody buys more of one thing for one bicycle. */
const MOST_OF_ONE = 1000;
const MOST_ENTRIES = 200;

/** The ids that a find may name. */
export interface FindVocabulary {
  /** Parts that can be missing or bought. */
  readonly parts: readonly string[];
  /** Work that can be done. */
  readonly operations: readonly string[];
}

function soFar({ parts, operations }: FindVocabulary) {
  const bought = z.strictObject({
    part: z.enum(parts).describe("Id of a part, consumable or service"),
    quantity: z
      .number()
      .positive()
      .max(MOST_OF_ONE)
      .optional()
      .describe("Bought in all, fitted ones too; absent: 1"),
    reuseValue: money.optional().describe("What one is worth unused; absent: 0"),
  });
  return z
    .strictObject({
      money: money.optional().describe("Spent: shown, never counted again"),
      minutes: minutes.optional().describe("Spent: shown, never counted again"),
      done: z
        .array(z.enum(operations))
        .max(MOST_ENTRIES)
        .optional()
        .describe(
          "Ids of finished work that held, on every wheel it concerns. What failed, and what a test showed, is told as an observation instead",
        ),
      bought: z.array(bought).max(MOST_ENTRIES).optional().describe("Parts bought for it"),
    })
    .describe("The job so far: only what remains is counted");
}

/** The description as sent, flat: words, numbers and markings side by side. */
function flatFind(known: FindVocabulary) {
  const { parts } = known;
  return z.strictObject({
    id: z.string().max(200).optional().describe("A label of your own"),
    ...attributes,
    year: z.int().min(1880).max(2030).optional().describe("Year it was made in; era or year is needed"),
    frameSizeMm: z
      .number()
      .min(100)
      .max(1000)
      .optional()
      .describe("Seat tube, mm. Kept for the record: sizeClass is what bears on the value"),
    tyreMarking: shortMarking.optional(),
    beadSeatDiameterMm: z.number().min(100).max(800).optional().describe("Bead seat diameter, mm (ISO 5775)"),
    rearSprockets: z.int().min(1).max(14).optional().describe("Count of sprockets at the back"),
    desirability: share.optional().describe("0 to 1: lugs, chrome, eyelets and the like"),
    originality: share
      .optional()
      .describe("1 all original, 0.8 sensible replacements, 0.5 mixed, 0 changed in kind"),
    missingParts: z.array(z.enum(parts)).max(200).optional().describe("Ids of parts that are not there"),
    purchase: purchase.optional(),
    soFar: soFar(known).optional(),
  });
}

const shortMarking = z
  .string()
  .min(1)
  .max(60)
  .describe('As written on the tyre, such as "32-622" or "27 x 1 1/4"');

type FlatFind = z.output<ReturnType<typeof flatFind>>;

/**
 * One find: its description, what it costs, what was spent on it. Era or year is needed, and given both they agree.
 */
export function find(known: FindVocabulary) {
  return flatFind(known)
    .superRefine(refuseEra, { when: ({ value }) => typeof value === "object" && value !== null })
    .transform(toFind);
}

/** Told along with other faults, so that one answer names them all. */
function refuseEra({ era, year }: Partial<FlatFind>, context: z.RefinementCtx): void {
  if (era === undefined && year === undefined) {
    context.addIssue({
      code: "invalid_value",
      values: [...ERAS],
      path: ["era"],
      input: undefined,
      message: "era is missing: give the decade it was made in, or give year",
    });
    return;
  }
  const agrees = typeof year !== "number" || typeof era !== "string" || eraOfYear(year) === era;
  if (agrees || !ERAS.includes(era)) return;
  const message = `era ${era} and year ${year} do not agree (${year} is ${eraOfYear(year)}): correct one or leave it out`;
  for (const field of ["era", "year"]) {
    context.addIssue({ code: "custom", path: [field], message, input: undefined });
  }
}

/** The find as the engine takes it: words apart from numbers, the era settled. */
function toFind({ id, ...flat }: FlatFind): AppraisalRequest["find"] {
  const { desirability, originality, missingParts, purchase, soFar } = flat;
  const { rearSprockets, beadSeatDiameterMm, tyreMarking } = flat;
  const described: Partial<Record<AttributeName, string>> = {};
  for (const name of ATTRIBUTE_NAMES) {
    const value = flat[name];
    if (value !== undefined) described[name] = value;
  }
  if (flat.era === undefined && flat.year !== undefined) described.era = eraOfYear(flat.year);
  return {
    id,
    attributes: described as DescribedAttributes,
    dimensions: { rearSprockets, beadSeatDiameterMm, tyreMarking },
    desirability,
    originality,
    missingParts,
    purchase,
    soFar,
  };
}
