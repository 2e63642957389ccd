import * as z from "zod";

/** A thousand million: room for every currency, far from where sums would lose their cents. */
export const MOST_MONEY = 1e9;
/** Ten weeks of nights and days: nobody restores a bicycle for longer. */
const MOST_MINUTES = 100_000;

/** Money in the currency of the request, 0 or more. */
export const money = z.number().min(0).max(MOST_MONEY).describe("Money in the request's currency");
/** Minutes, 0 or more. */
export const minutes = z.number().min(0).max(MOST_MINUTES).describe("Minutes");
/** A number from 0 to 1. */
export const share = z.number().min(0).max(1);
/** The id of a level, flag or the like: looked up later, so any short text passes. */
export const shortText = z.string().min(1).max(80);
