import * as z from "zod";
import type { Part, PriceRange, Tool } from "../engine/service/part.ts";
import { tier } from "./words.ts";

/** The rows of the tables of parts and tools. All prices are invented. */

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const words = z.string().min(1);
const money = z.number().min(0);

const priceRange = z
  .strictObject({ low: money, typical: money, high: money })
  .refine((row) => row.low <= row.typical && row.typical <= row.high, {
    error: "low <= typical <= high",
  }) satisfies z.ZodType<PriceRange>;

const byTier = z.strictObject({ entry: priceRange, mid: priceRange, upper: priceRange, top: priceRange });

/** A part, a dose of a consumable or an outside service. */
export const partRow = z
  .strictObject({
    id,
    name: words,
    kind: z.enum(["part", "consumable", "service"]),
    unit: words,
    sizes: z
      .array(z.strictObject({ what: words, check: id.exactOptional() }))
      .min(1)
      .exactOptional(),
    buy: z.strictObject({
      state: z.enum(["new", "used"]),
      tiersBelow: z.literal([0, 1]),
      tierCap: tier.exactOptional(),
    }),
    prices: z.strictObject({ new: byTier, used: byTier.nullable().default(null) }),
    note: words.exactOptional(),
  })
  .refine((row) => row.buy.state === "new" || row.prices.used !== null, {
    path: ["buy", "state"],
    error: "what is bought used has a used price",
  }) satisfies z.ZodType<Part>;

/** A special tool, bought or borrowed. */
export const toolRow = z
  .strictObject({ id, name: words, buy: money, borrow: money })
  .refine((row) => row.borrow <= row.buy, { error: "borrow <= buy" }) satisfies z.ZodType<Tool>;
