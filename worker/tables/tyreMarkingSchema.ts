import * as z from "zod";
import type { TyreName } from "../engine/inspection/tyreName.ts";

const words = z.string().min(1);

/** One traditional name of a bead seat diameter. Open widths, no letter, no marks and a name used without marks may be left out. */
export const tyreMarkingRow = z
  .strictObject({
    nominal: z.number().positive(),
    style: z.enum(["decimal", "fraction", "fractions", "letter", "metric"]),
    widthFrom: z.number().positive().nullable().default(null),
    widthTo: z.number().positive().nullable().default(null),
    letter: z
      .string()
      .regex(/^[A-D]$/)
      .nullable()
      .default(null),
    marks: z.array(z.string().regex(/^[A-Z0-9]+$/)).default([]),
    unmarked: z.boolean().default(true),
    diameterMm: z.int().positive(),
    reason: words,
    source: words,
    fromMemory: z.boolean(),
  })
  .refine((row) => (row.style === "letter") === (row.letter !== null), {
    error: "a name with a rim letter says which, and no other has one",
  })
  .refine((row) => row.widthFrom === null || row.widthTo === null || row.widthFrom <= row.widthTo, {
    error: "widthFrom is not above widthTo",
  })
  .refine((row) => row.unmarked || row.marks.length > 0, {
    error: "a name that is not used without a mark has one",
  }) satisfies z.ZodType<TyreName>;
