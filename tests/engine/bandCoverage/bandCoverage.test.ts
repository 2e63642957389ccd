import { describe, expect, test } from "vitest";
import { COMPILED } from "../valuation/demoModel.ts";
import { allowed, bandCoverage } from "./bandCoverage.ts";

const DRAWS = 10_000;

describe("a band promises what it keeps: 10,000 sales drawn from what the model believes, after none to ten comparables", () => {
  test("78 to 82 in 100 lie between its 10 and 90 % points, half between the quarters, half below the middle", () => {
    const { inFourFifths, inHalf, belowMiddle } = bandCoverage(COMPILED, DRAWS, 20_261_125);
    expect(inFourFifths).toBeGreaterThan(0.78);
    expect(inFourFifths).toBeLessThan(0.82);
    expect(Math.abs(inHalf - 0.5)).toBeLessThan(allowed(0.5, DRAWS));
    expect(Math.abs(belowMiddle - 0.5)).toBeLessThan(allowed(0.5, DRAWS));
  }, 120_000);
});
