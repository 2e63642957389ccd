import * as z from "zod";
import { minutes, money } from "./amounts.ts";
import { byId } from "./byId.ts";

/** What selling costs. */
export const fee = z
  .strictObject({
    rate: z.number().min(0).lt(1).optional().describe("Share of the price, 0 to below 1"),
    fixed: money.optional(),
  })
  .describe("What selling costs");

/**
 * The user's workshop. Every field may be left out; the defaults stand in GET /v1/reference.
 * @param parts ids of parts that can have a price of one's own
 * @param tools ids of the special tools
 */
export function workshop(parts: readonly string[], tools: readonly string[]) {
  return z
    .strictObject({
      hourlyGoal: money.optional().describe("What one more hour must earn"),
      speedFactor: z
        .number()
        .min(0.1)
        .max(10)
        .optional()
        .describe("1 is a practised hobbyist; 1.2 takes a fifth longer"),
      skill: z.literal([1, 2, 3, 4]).optional(),
      tools: z
        .array(z.enum(tools))
        .max(200)
        .optional()
        .describe("Ids of the special tools at hand; absent: all of them"),
      fee: fee.optional(),
      packing: money.optional().describe("Packing for one sale"),
      sellingMinutes: minutes
        .optional()
        .describe("Minutes for photographs, listing and hand-over, in place of the table's"),
      month: z
        .int()
        .min(1)
        .max(12)
        .optional()
        .describe("Month of the sale; absent: the seasons are averaged"),
      partPrices: byId(parts, money)
        .optional()
        .describe("Prices of one's own, by part id; each replaces the table's range"),
      priceLevel: z
        .number()
        .min(0.001)
        .max(1e6)
        .optional()
        .describe("Scales the table's prices to a market or currency whose level differs"),
    })
    .describe("The user's workshop");
}
