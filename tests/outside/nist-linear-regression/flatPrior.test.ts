import { describe, expect, test } from "vitest";
import {
  coefficientVariance,
  expectedCoefficients,
  flatPrior,
  learn,
} from "../../../worker/engine/statistics/conjugateRegression.ts";
import { designOf, digits, SET_NAMES, SETS, type SetName } from "./referenceSets.ts";

/**
 * Correct decimal digits asked of coefficients, standard errors and residual spread. Rotations work on R, whose condition number is that of the design
 * and not its square, so about 16 minus its decimal logarithm are left: one column costs nothing (NoInt1), a straight line or a parabola two to four
 * (Norris, Pontius), six collinear series (Longley) or powers up to the fifth (Wampler) four to seven. Where nought is certified (Wampler1 and 2 are fitted
 * without an error) the digits are those of the absolute error, and responses up to 3 million in Wampler1 leave fewer than up to 63 in Wampler2.
 */
const DIGITS: Readonly<Record<SetName, { coefficients: number; errors: number; spread: number }>> = {
  Norris: { coefficients: 12, errors: 12.5, spread: 12.5 },
  Pontius: { coefficients: 12, errors: 11, spread: 11 },
  NoInt1: { coefficients: 13.5, errors: 13, spread: 13 },
  Longley: { coefficients: 10, errors: 11.5, spread: 12 },
  Wampler1: { coefficients: 9, errors: 9.5, spread: 9.5 },
  Wampler2: { coefficients: 11.5, errors: 13.5, spread: 13.5 },
  Wampler3: { coefficients: 8, errors: 12.5, spread: 13 },
};

describe("with nothing believed beforehand the conjugate regression reaches the certified values (NIST StRD, SOURCE.md)", () => {
  test.each(SET_NAMES)("%s", (name) => {
    const set = SETS[name];
    const { design, y } = designOf(set);
    const size = set.coefficients.length;
    const rows = design.map((x, index) => ({ x, y: y[index]!, precision: 1 }));
    const belief = learn(flatPrior(size), rows);
    const asked = DIGITS[name];
    const spread = Math.sqrt(belief.scale / belief.shape);
    const unit = (column: number) => Array.from({ length: size }, (_, at) => (at === column ? 1 : 0));
    const found = expectedCoefficients(belief);
    set.coefficients.forEach((certified, column) => {
      expect(digits(found[column]!, certified)).toBeGreaterThan(asked.coefficients);
    });
    set.standardErrors.forEach((certified, column) => {
      const error = spread * Math.sqrt(coefficientVariance(belief, unit(column)));
      expect(digits(error, certified)).toBeGreaterThan(asked.errors);
    });
    expect(digits(spread, set.residualSd)).toBeGreaterThan(asked.spread);
    expect(2 * belief.shape).toBe(rows.length - size);
  });
});
