import * as z from "zod";
import type { Sensitivity } from "../../engine/decision/sensitivity.ts";
import { money, share } from "./figures.ts";

const end = z.strictObject({
  input: z
    .number()
    .describe(
      "Money: takings for salePrice, the planned purchases for partPrices, all money out for hiddenFaults and failingJobs; for pace the speed factor",
    ),
  rate: money.describe("Expected margin over expected hours"),
  netBenefit: money,
});

/** How far one group of inputs moves the chosen course. */
export const sensitivity = z.strictObject({
  group: z.enum(["salePrice", "hiddenFaults", "failingJobs", "pace", "partPrices"]),
  low: end.describe("At its 10 % point, the rest as expected"),
  high: end.describe("At its 90 % point, the rest as expected"),
  share: share.describe("First-order share of the variance of the net benefit"),
}) satisfies z.ZodType<Sensitivity>;
