import * as z from "zod";
import { ATTRIBUTE_VALUES as VALUES } from "../../engine/bicycle.ts";

/** The words of a description: the four that carry most are asked for, the others may be left out. */
export const attributes = {
  category: z.enum(VALUES.category),
  era: z.enum(VALUES.era).optional().describe("Decade it was made in; era or year is needed"),
  frameMaterial: z.enum(VALUES.frameMaterial),
  componentTier: z.enum(VALUES.componentTier),
  sizeClass: z.enum(VALUES.sizeClass).optional(),
  completeness: z.enum(VALUES.completeness).optional(),
  kept: z.enum(VALUES.kept).optional().describe("Where it stood over the years"),
  place: z.enum(VALUES.place).optional().describe("Where it will be sold"),
  forkMaterial: z.enum(VALUES.forkMaterial).optional(),
  hasCarbon: z.enum(VALUES.hasCarbon).optional().describe("Any part that carries load is of carbon"),
  fork: z.enum(VALUES.fork).optional(),
  steering: z.enum(VALUES.steering).optional(),
  drivetrain: z.enum(VALUES.drivetrain).optional(),
  bottomBracket: z.enum(VALUES.bottomBracket).optional(),
  bbThread: z.enum(VALUES.bbThread).optional().describe("Thread of the bottom-bracket shell"),
  cranks: z.enum(VALUES.cranks).optional(),
  hub: z.enum(VALUES.hub).optional(),
  barMaterial: z.enum(VALUES.barMaterial).optional(),
  barType: z.enum(VALUES.barType).optional(),
  rimMaterial: z.enum(VALUES.rimMaterial).optional(),
  brakeType: z.enum(VALUES.brakeType).optional(),
  postMaterial: z.enum(VALUES.postMaterial).optional(),
  stepThrough: z.enum(VALUES.stepThrough).optional(),
  fixedGear: z.enum(VALUES.fixedGear).optional(),
} satisfies Record<keyof typeof VALUES, z.ZodType>;
