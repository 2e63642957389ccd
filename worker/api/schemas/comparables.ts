import * as z from "zod";
import { ERAS } from "../../engine/bicycle.ts";
import { type Comparable, PRICE_KINDS } from "../../engine/valuation/comparable.ts";
import { NOT_RIDING } from "../../engine/valuation/saleDescription.ts";
import { MOST_MONEY, share, shortText } from "./amounts.ts";
import { attributes } from "./attributes.ts";
import { currency } from "./currency.ts";
import { eraOfYear } from "./eraOfYear.ts";

/** Enough for a lifetime of sales. */
const MOST_COMPARABLES = 5000;
/** No bicycle sold for less: below it a slip would send every sum out of range. */
const LEAST_PRICE = 0.01;
/** A hundred years: older counts for nothing. */
const MOST_DAYS = 36_525;

const flat = z.strictObject({
  price: z
    .number()
    .min(LEAST_PRICE)
    .max(MOST_MONEY)
    .describe("Money in the request's currency, 0.01 or more"),
  currency: currency.optional().describe("Only the request's own: currencies are never mixed"),
  kind: z.enum(PRICE_KINDS).describe("paid: what changed hands; asked: what an advertisement says"),
  ageDays: z.number().min(0).max(MOST_DAYS).optional().describe("Days since that price; absent: today"),
  likeThis: z.boolean().optional().describe("The same model as the find"),
  id: shortText.optional().describe("A label of your own"),
  category: attributes.category.exclude(["e-bike-out-of-scope"]).optional(),
  era: z.enum(ERAS).optional().describe("Decade it was made in; or give year"),
  year: z.int().min(1880).max(2030).optional().describe("Year it was made in; or give era"),
  frameMaterial: attributes.frameMaterial.optional(),
  componentTier: attributes.componentTier.optional(),
  sizeClass: attributes.sizeClass,
  place: attributes.place,
  stepThrough: attributes.stepThrough,
  drivetrain: attributes.drivetrain,
  state: z
    .enum(["rides", ...NOT_RIDING])
    .optional()
    .describe("How it was sold"),
  condition: share
    .optional()
    .describe("Visible condition: 0 needs listed work, 0.45 sound but tired, 0.75 ready, 1 fully restored"),
  originality: share.optional().describe("As of a find"),
  desirability: share.optional().describe("As of a find"),
  month: z.int().min(1).max(12).optional().describe("Month of the sale"),
});

type Flat = z.output<typeof flat>;

/** One price the user knows of. What is left out of its description is averaged over, never guessed. */
const comparable = flat.superRefine(refuseContradiction).transform(toComparable);

/** Prices the user knows of. */
export function comparables(description: string) {
  return z.array(comparable).max(MOST_COMPARABLES).optional().describe(description);
}

function refuseContradiction({ era, year, state, condition }: Flat, context: z.RefinementCtx): void {
  if (era !== undefined && year !== undefined && eraOfYear(year) !== era) {
    const message = `era ${era} and year ${year} do not agree (${year} is ${eraOfYear(year)}): correct one or leave it out`;
    for (const field of ["era", "year"]) context.addIssue({ code: "custom", path: [field], message });
  }
  if (condition !== undefined && state !== undefined && state !== "rides") {
    const message = `condition is for a bicycle that rides, and state is ${state}: leave one of them out`;
    context.addIssue({ code: "custom", path: ["condition"], message });
  }
}

/** With its currency, for the check against the request's. */
function toComparable(sent: Flat): Comparable & { readonly currency: string | undefined } {
  const { category, frameMaterial, componentTier, sizeClass, place, stepThrough, drivetrain } = sent;
  const { id, price, kind, ageDays = 0, likeThis = false, state, condition, originality, month } = sent;
  const era = sent.era ?? (sent.year === undefined ? undefined : eraOfYear(sent.year));
  return {
    id,
    price,
    kind,
    ageDays,
    likeThis,
    attributes: { category, era, frameMaterial, componentTier, sizeClass, place, stepThrough, drivetrain },
    state,
    condition,
    originality,
    desirability: sent.desirability,
    month,
    currency: sent.currency,
  };
}
