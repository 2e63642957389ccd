import { describe, expect, test } from "vitest";
import { studentTCdf } from "../../../worker/engine/statistics/studentT.ts";
import { crpsEnsemble, crpsNormal, crpsStudentT } from "./crps.ts";

/** The definition, by the trapezoidal rule on both sides of y, where the integrand jumps. */
function byDefinition(y: number, cdf: (x: number) => number, reach: number): number {
  const STEPS = 200_000;
  const side = (from: number, to: number, passed: number) => {
    const step = (to - from) / STEPS;
    let sum = 0;
    for (let at = 0; at <= STEPS; at++)
      sum += (at % STEPS === 0 ? 0.5 : 1) * (cdf(from + at * step) - passed) ** 2;
    return sum * step;
  };
  return side(y - reach, y, 0) + side(y, y + reach, 1);
}

describe("continuous ranked probability score", () => {
  // Normal: seen in the tests of public packages that score forecasts, computed by quadrature too. The others: closed form and quadrature.
  test.each([
    [0, 0.23369497725510907],
    [1, 0.6024413576276163],
    [-3, 2.436574725086339],
  ])("of the standard normal at %d", (y, value) => {
    expect(crpsNormal(y, 0, 1)).toBeCloseTo(value, 13);
    expect(crpsNormal(7 + 5 * y, 7, 5)).toBeCloseTo(5 * value, 12);
  });

  test.each([
    [0, 5, 0.25702536290064726],
    [1.5, 8, 0.9770585302562738],
  ])("of Student's t at %d with %d degrees of freedom", (y, degreesOfFreedom, value) => {
    expect(crpsStudentT(y, 0, 1, degreesOfFreedom)).toBeCloseTo(value, 13);
    expect(crpsStudentT(7 - 5 * y, 7, 5, degreesOfFreedom)).toBeCloseTo(5 * value, 12);
  });

  test("of an ensemble", () => {
    expect(crpsEnsemble(2, [0, 1, 3])).toBeCloseTo(0.6666666666666666, 14);
    expect(crpsEnsemble(2, [3, 0, 1])).toBeCloseTo(0.6666666666666666, 14);
    expect(crpsEnsemble(5, [2])).toBe(3);
  });

  test("of Student's t is the integral that defines it", () => {
    const found = byDefinition(1.5, (x) => studentTCdf(x, 8), 60);
    expect(crpsStudentT(1.5, 0, 1, 8)).toBeCloseTo(found, 6);
  });

  test("of Student's t nears the normal's as its degrees of freedom grow", () => {
    expect(crpsStudentT(1, 0, 1, 1e6)).toBeCloseTo(crpsNormal(1, 0, 1), 5);
  });
});
