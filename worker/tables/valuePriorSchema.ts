import * as z from "zod";
import { ATTRIBUTE_VALUES } from "../engine/bicycle.ts";
import type { DemoDriver } from "../engine/valuation/driver.ts";
import type { Papers, Presentation, SaleState } from "../engine/valuation/saleDescription.ts";
import type { ValuePrior } from "../engine/valuation/valueTables.ts";
import { category } from "./words.ts";

/** How the value model learns from sales of one's own. Invented figures. */

const STATES = [
  "rides",
  "does-not-ride",
  "major-parts-missing",
  "frame-and-fork",
] as const satisfies SaleState["kind"][];
const PRESENTATIONS = ["full", "plain", "poor"] as const satisfies Presentation[];
const PAPERS = ["receipt", "bill", "none"] as const satisfies Papers[];
const DRIVERS = [
  "level",
  "kind",
  "era",
  "material",
  "size",
  "fashion",
  "originality",
  "desirability",
  "condition",
  "presentation",
  "papers",
  "season",
  "place",
] as const satisfies DemoDriver[];

const share = z.number().min(0).max(1);
const sd = z.number().positive();

/** Floating sums of decimal shares. */
const ROUNDING = 1e-9;

const sumsToOne = (shares: readonly number[]) =>
  Math.abs(shares.reduce((sum, one) => sum + one, 0) - 1) < ROUNDING;

function sharesOf<Level extends string>(levels: readonly Level[]) {
  return z
    .record(z.enum(levels as readonly [Level, ...Level[]]), share)
    .refine((row) => sumsToOne(Object.values<number>(row)), { error: "shares sum to 1" });
}

const atKnots = z.tuple([share, share, share, share]).refine(sumsToOne, { error: "shares sum to 1" });

const { era, componentTier, frameMaterial, sizeClass, place, stepThrough, drivetrain } = ATTRIBUTE_VALUES;

const shares = z.strictObject({
  category: z
    .record(category.exclude(["e-bike-out-of-scope"]), share)
    .refine((row) => sumsToOne(Object.values<number>(row)), { error: "shares sum to 1" }),
  componentTier: sharesOf(componentTier),
  era: sharesOf(era),
  frameMaterial: z.record(z.enum(era), sharesOf(frameMaterial)),
  sizeClass: sharesOf(sizeClass),
  place: sharesOf(place),
  stepThrough: sharesOf(stepThrough),
  drivetrain: sharesOf(drivetrain),
  state: sharesOf(STATES),
  condition: atKnots,
  originality: atKnots,
  desirability: z
    .array(z.strictObject({ value: share, share }))
    .min(1)
    .refine((rows) => sumsToOne(rows.map((row) => row.share)), { error: "shares sum to 1" }),
  presentation: sharesOf(PRESENTATIONS),
  papers: sharesOf(PAPERS),
});

/** The weight of the demo sales, the spreads that let one's own sales count, and the market's shares. */
export const valuePrior = z.strictObject({
  demoSalesCount: z.number().gt(2, "more than 2, so that the spread of prices is finite"),
  halfLifeDays: z.number().positive(),
  betweenModels: z.number().positive(),
  surprising: z.number().positive(),
  asked: z.strictObject({ factor: z.number().positive(), sd }),
  marketSd: sd,
  marketOfCategorySd: sd,
  driverSd: z.record(z.enum(DRIVERS), sd),
  shares,
}) satisfies z.ZodType<ValuePrior>;
