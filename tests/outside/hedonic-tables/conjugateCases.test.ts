import { describe, expect, test } from "vitest";
import {
  type ConjugateRegression,
  coefficientVariance,
  conjugatePrior,
  expectedCoefficients,
  learn,
  predictive,
  type RegressionRow,
} from "../../../worker/engine/statistics/conjugateRegression.ts";
import { studentTQuantile } from "../../../worker/engine/statistics/studentT.ts";
import cases from "./conjugateCases.json" with { type: "json" };
import { dataAtHand } from "./dataAtHand.ts";

const homes = dataAtHand("homes14.csv");
const FEW = 4;
/** Textbook formula and augmented least squares agree to this; the flat case subtracts 1e8 times as much as it keeps. */
const TOLERANCE = 1e-9;

/** Log price on 1 and log area less log 1900. */
function rowsOf(columns: ReadonlyMap<string, readonly number[]>): readonly RegressionRow[] {
  const areas = columns.get("sqft")!;
  return columns.get("price")!.map((price, row) => ({
    x: [1, Math.log(areas[row]!) - Math.log(1900)],
    y: Math.log(price),
    precision: 1,
  }));
}

function priorOf({ m0, V0diag, a0, b0 }: (typeof cases)["nig_homes14"]): ConjugateRegression {
  const entries = [1 / Math.sqrt(V0diag[0]!), 0, 1 / Math.sqrt(V0diag[1]!)];
  return conjugatePrior(m0, { size: 2, entries }, a0, b0);
}

function near(found: number, value: number): void {
  expect(Math.abs(found / value - 1)).toBeLessThan(TOLERANCE);
}

describe("normal-inverse-gamma regression agrees with the textbook formula worked elsewhere (SOURCE.md)", () => {
  for (const [name, one] of Object.entries(cases)) {
    test.skipIf(homes === null)(`${name}${homes ? "" : ": data not at hand"}`, () => {
      const rows = rowsOf(homes!);
      const belief = learn(priorOf(one), name.endsWith("_few") ? rows.slice(0, FEW) : rows);
      near(belief.shape, one.an);
      near(belief.scale, one.bn);
      expectedCoefficients(belief).forEach((value, column) => {
        near(value, one.mn[column]!);
      });
      // The scale of a coefficient's t: its standard deviation were s^2 known to be b / a.
      one.postSdBeta.forEach((value, column) => {
        const variance = coefficientVariance(belief, [1 - column, column]);
        near(Math.sqrt((belief.scale / belief.shape) * variance), value);
      });
      const { location, scale, degreesOfFreedom } = predictive(belief, one.x0);
      near(location, one.predMean);
      near(scale, one.predScale);
      near(degreesOfFreedom, one.predDf);
      for (const { level, lo, hi } of one.intervals) {
        const reach = scale * studentTQuantile((1 + level) / 2, degreesOfFreedom);
        near(location - reach, lo);
        near(location + reach, hi);
      }
    });
  }
});
