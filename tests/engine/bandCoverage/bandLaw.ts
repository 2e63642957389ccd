import { expect } from "vitest";
import { COMPILED } from "../valuation/demoModel.ts";
import { allowed, bandCoverage } from "./bandCoverage.ts";

/** Of sales drawn from what the model believes, 78 to 82 in 100 lie between the band's 10 and 90 % points, half between its quarters, half below its middle. */
export function bandKeepsItsPromise(draws: number): void {
  const { inFourFifths, inHalf, belowMiddle } = bandCoverage(COMPILED, draws, 20_261_125);
  expect(inFourFifths).toBeGreaterThan(0.78);
  expect(inFourFifths).toBeLessThan(0.82);
  expect(Math.abs(inHalf - 0.5)).toBeLessThan(allowed(0.5, draws));
  expect(Math.abs(belowMiddle - 0.5)).toBeLessThan(allowed(0.5, draws));
}
