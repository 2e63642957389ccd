import { describe, expect, test } from "vitest";
import { leastSquares } from "../../../worker/engine/statistics/leastSquares.ts";
import data from "./data.json" with { type: "json" };

/** Correct decimal digits asked of coefficients, standard errors and residual spread: what each set's conditioning leaves. */
const DIGITS = {
  Norris: { coefficients: 12, spread: 12 },
  Pontius: { coefficients: 11, spread: 11 },
  NoInt1: { coefficients: 14, spread: 13 },
  Longley: { coefficients: 10, spread: 11 },
  Wampler1: { coefficients: 9, spread: 8 },
  Wampler2: { coefficients: 12, spread: 12 },
  Wampler3: { coefficients: 9, spread: 10 },
} as const;

type SetName = keyof typeof DIGITS;

interface ReferenceSet {
  readonly powers?: readonly number[];
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly residualSd: number;
  readonly rows: readonly (readonly number[])[];
}

function fitOf({ rows, powers }: ReferenceSet) {
  const design = rows.map(([, ...x]) =>
    powers === undefined ? [1, ...x] : powers.map((power) => x[0]! ** power),
  );
  return leastSquares(
    design,
    rows.map(([y]) => y!),
  );
}

function digits(found: number, certified: number): number {
  const error = Math.abs(found - certified) / (certified === 0 ? 1 : Math.abs(certified));
  return error === 0 ? 16 : -Math.log10(error);
}

describe("least squares agree with the certified values (NIST StRD, see SOURCE.md)", () => {
  test.each(Object.keys(DIGITS) as SetName[])("%s", (name) => {
    const set: ReferenceSet = data[name];
    const fit = fitOf(set);
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
