import { expect, test } from "vitest";
import { leverage } from "../../../worker/engine/statistics/leastSquares.ts";
import { predict } from "../../../worker/engine/valuation/prediction.ts";
import { compileModel } from "../../../worker/engine/valuation/valueModel.ts";
import { valueRow } from "../../../worker/engine/valuation/valueRow.ts";
import { FITTED, MODEL } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

test("the leverage from the covariance is that of a solve with R", () => {
  const sale = plainSale(
    { category: "touring", era: "1980s", sizeClass: "small" },
    { originality: 0.6, month: null },
  );
  const { columns, values } = valueRow(MODEL.layout, sale);
  const row = new Float64Array(FITTED.columns.length);
  columns.forEach((column, i) => {
    row[column] = values[i]!;
  });
  const triangle = { size: row.length, entries: FITTED.squareRootInformation };
  expect(predict(MODEL, sale).leverage / leverage(triangle, row)).toBeCloseTo(1, 9);
});

test("a model whose columns are not those of its design is refused with the remedy", () => {
  const [first, second, ...rest] = FITTED.columns;
  expect(() => compileModel({ ...FITTED, columns: [second!, first!, ...rest] })).toThrow(
    /columns\[0\] requires level: run npm run data/,
  );
  expect(() => compileModel({ ...FITTED, columns: [...FITTED.columns, first!] })).toThrow("160 columns");
  expect(() => compileModel({ ...FITTED, squareRootInformation: [1] })).toThrow(
    "squareRootInformation requires",
  );
});
