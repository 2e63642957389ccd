import { expect, test } from "vitest";
import { partsGross } from "../../../worker/engine/valuation/partsGross.ts";
import { readyBase } from "../../../worker/engine/valuation/prediction.ts";
import { MODEL } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

/** Invented shares, as in the demo tables. */
const TABLE = {
  grossShare: { entry: 0.22, mid: 0.45, upper: 0.75, top: 0.95 },
  category: { "road-racing": 1, default: 0.55 },
};
const { attributes } = plainSale({ category: "road-racing", era: "1990s", componentTier: "upper" });

test("the parts of a racing bike: 700 x .50 x .75 = 262.50 (worked by hand)", () => {
  expect(partsGross(TABLE, 350, attributes)).toBeCloseTo(262.5, 10);
  const fitted = partsGross(TABLE, readyBase(MODEL, attributes), attributes);
  expect(Math.abs(fitted / 262.5 - 1)).toBeLessThan(0.04);
});

test("a category of its own beats the default", () => {
  expect(partsGross(TABLE, 100, attributes)).toBeCloseTo(75, 10);
  expect(partsGross(TABLE, 100, { ...attributes, category: "tandem" })).toBeCloseTo(41.25, 10);
});

test("a category without a factor is refused by name", () => {
  const { default: _, ...category } = TABLE.category;
  expect(() => partsGross({ ...TABLE, category }, 100, { ...attributes, category: "bmx" })).toThrow(
    "category requires a factor in the parts table, got bmx",
  );
});
