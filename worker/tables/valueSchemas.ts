import * as z from "zod";
import { ATTRIBUTE_VALUES } from "../engine/bicycle.ts";
import type {
  BikeClass,
  FittedModel,
  PartsValueTable,
  ValueDesign,
  ValueTables,
  ValueTerm,
} from "../engine/valuation/valueTables.ts";
import { byTier, pieceTable, share, spoiledPiece, words } from "./pieceSchemas.ts";
import { category, frameMaterial, tier } from "./words.ts";

/** The settings of the parts' value and the fitted regression. All figures are invented or fitted to invented sales. */

const era = z.enum(ATTRIBUTE_VALUES.era);

/** What a bike's parts fetch, and what a bike that was not polished lacks. */
export const partsValueTable = z.strictObject({
  grossShare: byTier,
  frameUnsaleable: byTier,
  category: z.partialRecord(category.or(z.literal("default")), z.number().positive()),
  soldShare: share,
  netShare: share,
  leastShare: share.positive(),
  spoiled: z.array(spoiledPiece),
  pieces: pieceTable,
  notPolishedPenalty: share,
}) satisfies z.ZodType<PartsValueTable & Pick<ValueTables, "notPolishedPenalty">>;

const bikeClass = z.strictObject({
  tiers: z.array(tier),
  categories: z.array(category),
  materials: z.array(frameMaterial),
  eras: z.array(era),
}) satisfies z.ZodType<BikeClass>;

const valueTerm = z.strictObject({
  ...bikeClass.shape,
  name: words,
  drivetrains: z.array(z.enum(ATTRIBUTE_VALUES.drivetrain)),
  stepThrough: z.array(z.enum(ATTRIBUTE_VALUES.stepThrough)),
  originalityFrom: share,
}) satisfies z.ZodType<ValueTerm>;

const knots = z
  .tuple([share, share, share, share])
  .refine((row) => row.every((x, at) => at === 0 || x > row[at - 1]!), {
    error: "knots rise",
  });

const design = z.strictObject({
  eraGroups: z.array(category),
  reference: z.strictObject({ category, tier }),
  material: z.array(valueTerm),
  fashion: z.array(valueTerm),
  conditionKnots: knots,
  originalityKnots: knots,
  circumstanceLimits: z
    .tuple([z.number().positive(), z.number().positive()])
    .refine(([low, high]) => low < high, {
      error: "the lower limit comes first",
    }),
  interest: z.strictObject({ full: z.array(bikeClass), otherwise: share }),
  collectable: z.strictObject({ any: z.array(valueTerm), spread: z.number().min(1) }),
}) satisfies z.ZodType<ValueDesign>;

/** The regression as fitted by the scripts of data/. */
export const valueModel = z
  .strictObject({
    design,
    columns: z.array(z.strictObject({ name: words, coefficient: z.number() })).min(1),
    squareRootInformation: z.array(z.number()),
    residualSd: z.number().positive(),
    degreesOfFreedom: z.number().positive(),
    largestLeverage: z.number().positive(),
    rows: z.int().positive(),
  })
  .refine((row) => row.squareRootInformation.length === (row.columns.length * (row.columns.length + 1)) / 2, {
    path: ["squareRootInformation"],
    error: "an upper triangle has n (n + 1) / 2 entries for n columns",
  }) satisfies z.ZodType<FittedModel>;
