import { describe, expect, test } from "vitest";
import { withHindsight } from "../../../worker/engine/decision/hindsight.ts";
import { normalQuantile } from "../../../worker/engine/statistics/standardNormal.ts";

/** A table of payoffs; sources in SOURCE.md. */
interface Example {
  readonly name: string;
  /** Chance of each state. */
  readonly prior: readonly number[];
  /** One row a course, one figure a state. */
  readonly pay: readonly (readonly number[])[];
  readonly expected: readonly number[];
  readonly withPerfect: number;
  readonly perfectInformation: number;
  /** Chance that the first course proves right. */
  readonly confidence: number;
}

const EXAMPLES: readonly Example[] = [
  {
    name: "Raiffa's oil wildcatter",
    prior: [0.5, 0.3, 0.2],
    pay: [
      [-70, 50, 200],
      [0, 0, 0],
    ],
    expected: [20, 0],
    withPerfect: 55,
    perfectInformation: 35,
    confidence: 0.5,
  },
  {
    name: "Hillier & Lieberman's land",
    prior: [0.25, 0.75],
    pay: [
      [700, -100],
      [90, 90],
    ],
    expected: [100, 90],
    withPerfect: 242.5,
    perfectInformation: 142.5,
    confidence: 0.25,
  },
  {
    name: "Samuelson & Marks's well",
    prior: [0.4, 0.6],
    pay: [
      [600, -200],
      [0, 0],
    ],
    expected: [120, 0],
    withPerfect: 240,
    perfectInformation: 120,
    confidence: 0.4,
  },
  {
    name: "the manual's well, its deposit known and its cost expected",
    prior: [0.5, 0.3, 0.2],
    pay: [
      [-310, 390, 890],
      [0, 0, 0],
    ],
    expected: [140, 0],
    withPerfect: 295,
    perfectInformation: 155,
    confidence: 0.5,
  },
  {
    // Returns are worth 450 on average, costs 150, 300 or 500.
    name: "the manual's well, its cost known and its deposit expected",
    prior: [0.2, 0.6, 0.2],
    pay: [
      [300, 150, -50],
      [0, 0, 0],
    ],
    expected: [140, 0],
    withPerfect: 150,
    perfectInformation: 10,
    confidence: 0.8,
  },
  {
    name: "the manual's well, both known",
    prior: [0.1, 0.3, 0.1, 0.06, 0.18, 0.06, 0.04, 0.12, 0.04],
    pay: [
      [-150, -300, -500, 550, 400, 200, 1050, 900, 700],
      [0, 0, 0, 0, 0, 0, 0, 0, 0],
    ],
    expected: [140, 0],
    withPerfect: 295,
    perfectInformation: 155,
    confidence: 0.5,
  },
];

/** Scenario by scenario, course by course. */
function tableOf(pay: readonly (readonly number[])[], states: number): Float64Array {
  return Float64Array.from(
    { length: states * pay.length },
    (_, i) => pay[i % pay.length]![Math.floor(i / pay.length)]!,
  );
}

describe("the value of perfect information in published decisions (see SOURCE.md)", () => {
  test.each(EXAMPLES)("$name: $perfectInformation", (example) => {
    const { prior, pay } = example;
    const payoffs = tableOf(pay, prior.length);
    const nothing = new Float64Array(payoffs.length);
    const weights = Float64Array.from(prior);
    // The payoffs as they are, at a certain price and at an uncertain one that they do not depend on; then as takings at a certain price of 1.
    for (const one of [
      { slopes: nothing, offsets: payoffs, priceFactor: { logMedian: 0, logSd: 0 } },
      { slopes: nothing, offsets: payoffs, priceFactor: { logMedian: 0.2, logSd: 0.5 } },
      { slopes: payoffs, offsets: nothing, priceFactor: { logMedian: 0, logSd: 0 } },
    ]) {
      const known = withHindsight({ courses: pay.length, weights, ...one }, 0);
      known.expected.forEach((expected, course) => {
        expect(expected).toBeCloseTo(example.expected[course]!, 10);
      });
      expect(known.expectedBest).toBeCloseTo(example.withPerfect, 10);
      expect(known.perfectInformation).toBeCloseTo(example.perfectInformation, 10);
      expect(known.confidence).toBeCloseTo(example.confidence, 12);
    }
  });

  test.each([
    { mean: 10, sd: 40, perfectInformation: 11.453787928943209 },
    { mean: -15, sd: 25, perfectInformation: 4.216818306043888 },
  ])("two actions with a normal prior of mean $mean and deviation $sd: $perfectInformation", (one) => {
    const states = 2 ** 16;
    const payoffs = Float64Array.from({ length: 2 * states }, (_, i) =>
      i % 2 === 0 ? one.mean + one.sd * normalQuantile((i / 2 + 0.5) / states) : 0,
    );
    const known = withHindsight(
      {
        courses: 2,
        slopes: new Float64Array(2 * states),
        offsets: payoffs,
        weights: new Float64Array(states).fill(1),
        priceFactor: { logMedian: 0, logSd: 0 },
      },
      0,
    );
    // The tails of 65 536 equal slices are cut a ten-thousandth of a deviation short.
    expect(Math.abs(known.perfectInformation - one.perfectInformation)).toBeLessThan(1e-4 * one.sd);
    expect(known.expected[0]).toBeCloseTo(one.mean, 9);
  });

  test("sell at an uncertain price or keep: the value of knowing the price is Hull's put, 0.81", () => {
    const [spot, strike, rate, volatility, years] = [42, 40, 0.1, 0.2, 0.5];
    const logSd = volatility * Math.sqrt(years);
    const discount = Math.exp(-rate * years);
    const known = withHindsight(
      {
        courses: 2,
        slopes: Float64Array.of(spot, 0),
        offsets: Float64Array.of(0, strike * discount),
        weights: Float64Array.of(1),
        priceFactor: { logMedian: -(logSd ** 2) / 2, logSd },
      },
      0,
    );
    expect(known.expected[0]).toBeCloseTo(spot, 12);
    // Printed as 0.81 and 4.76; more digits from scipy.
    expect(known.perfectInformation).toBeCloseTo(0.8085993729000904, 11);
    expect(known.expectedBest - strike * discount).toBeCloseTo(4.759422392871532, 11);
  });
});
