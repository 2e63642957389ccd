import { expect, test } from "vitest";
import { partsGross } from "../../../worker/engine/valuation/partsGross.ts";
import { readyBase } from "../../../worker/engine/valuation/prediction.ts";
import type { PartsValueTable } from "../../../worker/engine/valuation/valueTables.ts";
import { MODEL } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

/** Invented shares, as in the demo tables. */
const TABLE: PartsValueTable = {
  grossShare: { entry: 0.22, mid: 0.45, upper: 0.75, top: 0.95 },
  frameUnsaleable: { entry: 0.95, mid: 0.85, upper: 0.7, top: 0.65 },
  category: { "road-racing": 1, default: 0.55 },
  soldShare: 0.7,
  netShare: 0.9,
  spoiled: [],
};
const { attributes } = plainSale({ category: "road-racing", era: "1990s", componentTier: "upper" });

test("good parts on a crumpled frame: 700 x .50 x .75 x .70 = 184 (worked by hand)", () => {
  expect(partsGross(TABLE, 350, attributes, true, 0)).toBeCloseTo(183.75, 10);
  const fitted = partsGross(TABLE, readyBase(MODEL, attributes), attributes, true, 0);
  expect(Math.abs(fitted / 184 - 1)).toBeLessThan(0.04);
});

test("spoiled pieces are taken off in proportion, and a category of its own beats the default", () => {
  expect(partsGross(TABLE, 100, attributes, false, 0.4)).toBeCloseTo(45, 10);
  expect(partsGross(TABLE, 100, { ...attributes, category: "tandem" }, false, 0)).toBeCloseTo(41.25, 10);
  expect(partsGross(TABLE, 100, attributes, false, 1)).toBe(0);
});

test("a share outside 0 to 1 and a category without a factor are refused by name", () => {
  expect(() => partsGross(TABLE, 100, attributes, false, 1.1)).toThrow(
    "spoiledShare requires a number from 0 to 1",
  );
  const { default: _, ...category } = TABLE.category;
  expect(() => partsGross({ ...TABLE, category }, 100, { ...attributes, category: "bmx" }, false, 0)).toThrow(
    "category requires a factor in the parts table, got bmx",
  );
});
