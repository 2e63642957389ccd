import { describe, expect, test } from "vitest";
import {
  conjugatePrior,
  expectedCoefficients,
  learn,
} from "../../../worker/engine/statistics/conjugateRegression.ts";

/** Observations of one group whose mean is the given one: twelve that scatter, of equal weight. */
const QUARTERS = 12;
const SCATTER = 40;

interface Group {
  readonly collective: number;
  readonly within: number;
  readonly between: number;
  readonly mean: number;
  /** Of all observations together. */
  readonly weight: number;
}

/** A regression of one column, its coefficient drawn about the mean of all groups: what it says of the group. */
function premium({ collective, within, between, mean, weight }: Group): number {
  const prior = conjugatePrior([collective], { size: 1, entries: [Math.sqrt(within / between)] }, 1, within);
  const rows = Array.from({ length: QUARTERS }, (_, quarter) => ({
    x: [1],
    y: mean + SCATTER * (quarter - (QUARTERS - 1) / 2),
    precision: weight / QUARTERS,
  }));
  return expectedCoefficients(learn(prior, rows))[0]!;
}

/** By how much of the way the belief has come from the mean of all groups to that of the group's own observations. */
function credibility(within: number, between: number, weight: number): number {
  return premium({ collective: 0, within, between, mean: 1, weight });
}

describe("Bühlmann & Straub: claims in five states (SOURCE.md, seen)", () => {
  const [within, between] = [139_120_026, 10_952];
  test.each([
    [1, 1949, 2061, 100_155, 0.8874, 2048],
    [2, 1543, 1511, 19_895, 0.6103, 1524],
    [3, 1949, 1806, 13_735, 0.5195, 1875],
    [4, 1543, 1353, 4152, 0.2463, 1497],
    [5, 1543, 1600, 36_110, 0.7398, 1585],
  ])("state %i", (_, collective, mean, weight, factor, printed) => {
    // Printed to four digits and to the whole; means and parameters are rounded too.
    expect(Math.abs(credibility(within, between, weight) - factor)).toBeLessThan(6e-5);
    expect(Math.abs(premium({ collective, within, between, mean, weight }) - printed)).toBeLessThan(1);
  });
});

describe("Bühlmann: the same states, every quarter counted once (SOURCE.md, from memory)", () => {
  const [within, between, collective] = [46_040, 72_310, 1671];
  test.each([
    [1, 2064, 2044],
    [2, 1511, 1519],
    [3, 1822, 1814],
    [4, 1360, 1376],
    [5, 1599, 1602],
  ])("state %i", (_, mean, printed) => {
    expect(credibility(within, between, QUARTERS)).toBeCloseTo(0.9496, 4);
    expect(Math.abs(premium({ collective, within, between, mean, weight: QUARTERS }) - printed)).toBeLessThan(
      1,
    );
  });
});

describe("exam questions (SOURCE.md)", () => {
  test.each([
    ["one year earns 1/2", 1, 1 / 2, 3, 3 / 4],
    ["two years earn 0.40", 2, 0.4, 3, 0.5],
  ])("%s", (_, years, earned, later, answer) => {
    const ratio = (years * (1 - earned)) / earned;
    expect(credibility(ratio, 1, years)).toBeCloseTo(earned, 12);
    expect(credibility(ratio, 1, later)).toBeCloseTo(answer, 12);
  });
});
