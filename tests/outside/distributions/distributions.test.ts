import { describe, expect, test } from "vitest";
import { gaussHermite } from "../../../worker/engine/statistics/gaussHermite.ts";
import {
  logNormalCdf,
  logNormalMean,
  logNormalQuantile,
  logNormalSd,
} from "../../../worker/engine/statistics/logNormal.ts";
import { normalCdf, normalQuantile } from "../../../worker/engine/statistics/standardNormal.ts";
import { studentTCdf, studentTQuantile } from "../../../worker/engine/statistics/studentT.ts";
import data from "./data.json" with { type: "json" };

/** Sixteen-digit tables, a few roundings apart. */
const FEW_ROUNDINGS = 1e-14;

function relativeError(found: number, reference: number): number {
  return Math.abs(found / reference - 1);
}

describe("normal distribution (sources in SOURCE.md)", () => {
  test("quantiles and cdf agree with the table both ways", () => {
    for (const [probability, quantile] of data.normal as [number, number][]) {
      expect(relativeError(normalQuantile(probability), quantile)).toBeLessThan(FEW_ROUNDINGS);
      expect(relativeError(normalCdf(quantile), probability)).toBeLessThan(FEW_ROUNDINGS);
    }
  });

  // Computed with 40-digit arithmetic (mpmath ncdf).
  test.each([
    [-38, 2.8854283600687843e-316, 1e-6], // a subnormal number: few digits exist
    [-10, 7.6198530241605261e-24, 2e-15],
    [-6, 9.8658764503769814e-10, 2e-15],
    [-3, 0.0013498980316300945, 2e-15],
    [-1.5, 0.066807201268858066, 2e-15],
    [-0.5, 0.3085375387259869, 2e-15],
    [0.7, 0.75803634777692697, 2e-15],
    [5, 0.99999971334842812, 2e-15],
  ])("cdf at %f keeps its digits", (z, reference, tolerance) => {
    expect(relativeError(normalCdf(z), reference)).toBeLessThan(tolerance);
  });
});

describe("Student's t (sources in SOURCE.md)", () => {
  test.each(data.studentT)(
    "$degreesOfFreedom degrees of freedom",
    ({ degreesOfFreedom, quantiles, printed }) => {
      for (const [probability, quantile] of quantiles as [number, number][]) {
        // 1 - probability is known to 1.1e-16 only, which the far upper tail magnifies.
        const tolerance = FEW_ROUNDINGS / (1 - probability);
        expect(relativeError(studentTQuantile(probability, degreesOfFreedom), quantile)).toBeLessThan(
          tolerance,
        );
        expect(relativeError(studentTCdf(quantile, degreesOfFreedom), probability)).toBeLessThan(
          FEW_ROUNDINGS,
        );
      }
      for (const [probability, rounded] of printed as [number, number][]) {
        expect(Math.abs(studentTQuantile(probability, degreesOfFreedom) - rounded)).toBeLessThanOrEqual(
          0.0005001,
        );
      }
    },
  );
});

describe("log-normal distribution (sources in SOURCE.md)", () => {
  test.each(data.logNormal)("logMedian $logMedian, logSd $logSd", (row) => {
    expect(relativeError(logNormalMean(row), row.mean)).toBeLessThan(FEW_ROUNDINGS);
    expect(relativeError(logNormalSd(row) ** 2, row.variance)).toBeLessThan(FEW_ROUNDINGS);
    expect(relativeError(logNormalQuantile(row, 0.5), row.median)).toBeLessThan(FEW_ROUNDINGS);
    expect(relativeError(logNormalQuantile(row, 0.1), row.q10)).toBeLessThan(FEW_ROUNDINGS);
    expect(relativeError(logNormalQuantile(row, 0.9), row.q90)).toBeLessThan(FEW_ROUNDINGS);
    expect(relativeError(logNormalCdf(row, row.at), row.below)).toBeLessThan(FEW_ROUNDINGS);
  });
});

describe("Gauss-Hermite rule (Abramowitz & Stegun table 25.10, from memory)", () => {
  test.each([
    [2, 0, 0.945308720482942],
    [3, 0.958572464613819, 0.39361932315224],
    [4, 2.02018287045609, 0.019953242059046],
  ])("order 5, node %i", (index, node, weight) => {
    const { nodes, weights } = gaussHermite(5);
    expect(nodes[index]).toBeCloseTo(node * Math.SQRT2, 13);
    expect(weights[index]).toBeCloseTo(weight / Math.sqrt(Math.PI), 13);
  });
});
