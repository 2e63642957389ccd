import { expect, test } from "vitest";
import { coefficientVariance } from "../../../worker/engine/statistics/conjugateRegression.ts";
import { targetRow } from "../../../worker/engine/valuation/prediction.ts";
import { denseRow, medianVariance } from "../../../worker/engine/valuation/valueBelief.ts";
import { compileModel } from "../../../worker/engine/valuation/valueModel.ts";
import { FITTED, MODEL, PRIOR } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

test("the variance from the covariance is that of a solve with R", () => {
  const sale = plainSale(
    { category: "touring", era: "1980s", sizeClass: "small" },
    { originality: 0.6, month: null },
  );
  const { row } = targetRow(MODEL, sale);
  const solved = coefficientVariance(MODEL.regression, denseRow(row, MODEL.regression.size));
  expect(medianVariance(MODEL, row) / solved).toBeCloseTo(1, 12);
  expect(medianVariance({ ...MODEL, covariance: null }, row) / solved).toBeCloseTo(1, 14);
});

test("a model whose columns are not those of its design is refused with the remedy", () => {
  const [first, second, ...rest] = FITTED.columns;
  expect(() => compileModel({ ...FITTED, columns: [second!, first!, ...rest] }, PRIOR)).toThrow(
    /columns\[0\] requires kind:road-racing:entry: run npm run data/,
  );
  expect(() => compileModel({ ...FITTED, columns: [...FITTED.columns, first!] }, PRIOR)).toThrow(
    "160 columns",
  );
  expect(() => compileModel({ ...FITTED, squareRootInformation: [1] }, PRIOR)).toThrow(
    "squareRootInformation requires",
  );
});
