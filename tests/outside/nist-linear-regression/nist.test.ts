import { describe, expect, test } from "vitest";
import { leastSquares } from "../../../worker/engine/statistics/leastSquares.ts";
import { designOf, digits, SET_NAMES, SETS, type SetName } from "./referenceSets.ts";

/** Correct decimal digits asked of coefficients, standard errors and residual spread: what each set's conditioning leaves. */
const DIGITS = {
  Norris: { coefficients: 12, spread: 12 },
  Pontius: { coefficients: 11, spread: 11 },
  NoInt1: { coefficients: 14, spread: 13 },
  Longley: { coefficients: 10, spread: 11 },
  Wampler1: { coefficients: 9, spread: 8 },
  Wampler2: { coefficients: 12, spread: 12 },
  Wampler3: { coefficients: 9, spread: 10 },
} as const satisfies Record<SetName, unknown>;

describe("least squares agree with the certified values (NIST StRD, see SOURCE.md)", () => {
  test.each(SET_NAMES)("%s", (name) => {
    const set = SETS[name];
    const { design, y } = designOf(set);
    const fit = leastSquares(design, y);
    const asked = DIGITS[name];
    set.coefficients.forEach((certified, index) => {
      expect(digits(fit.coefficients[index]!, certified)).toBeGreaterThan(asked.coefficients);
    });
    set.standardErrors.forEach((certified, index) => {
      expect(digits(fit.standardErrors[index]!, certified)).toBeGreaterThan(asked.spread);
    });
    expect(digits(fit.residualSd, set.residualSd)).toBeGreaterThan(asked.spread);
  });
});
