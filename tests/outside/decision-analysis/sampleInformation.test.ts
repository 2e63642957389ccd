import { describe, expect, test } from "vitest";
import { sampleInformation } from "../../../worker/engine/decision/looking/sampleInformation.ts";
import { updated } from "../../../worker/engine/statistics/bayes.ts";
import { normalQuantile } from "../../../worker/engine/statistics/standardNormal.ts";

/** A test before a choice; sources in SOURCE.md. States in the same order throughout. */
interface Example {
  readonly name: string;
  readonly prior: readonly number[];
  /** One row an action. */
  readonly pay: readonly (readonly number[])[];
  /** One row an answer: its chance in each state. */
  readonly likelihoods: readonly (readonly number[])[];
  /** Chance of each answer, and the best expected pay after it. */
  readonly answers: readonly (readonly [chance: number, best: number])[];
  readonly sampleInformation: number;
}

const EXAMPLES: readonly Example[] = [
  {
    name: "Raiffa's oil wildcatter, seismic soundings",
    prior: [0.5, 0.3, 0.2],
    pay: [
      [-70, 50, 200],
      [0, 0, 0],
    ],
    likelihoods: [
      [0.6, 0.3, 0.1],
      [0.3, 0.4, 0.4],
      [0.1, 0.3, 0.5],
    ],
    answers: [
      [0.41, 0],
      [0.35, 32.857142857142854],
      [0.24, 87.5],
    ],
    sampleInformation: 12.5,
  },
  {
    name: "Hillier & Lieberman's land, a seismic survey",
    prior: [0.25, 0.75],
    pay: [
      [700, -100],
      [90, 90],
    ],
    likelihoods: [
      [0.6, 0.2],
      [0.4, 0.8],
    ],
    answers: [
      [0.3, 300],
      [0.7, 90],
    ],
    sampleInformation: 53,
  },
  {
    name: "Samuelson & Marks's well, an imperfect test",
    prior: [0.4, 0.6],
    pay: [
      [600, -200],
      [0, 0],
    ],
    likelihoods: [
      [3 / 4, 1 / 3],
      [1 / 4, 2 / 3],
    ],
    answers: [
      [0.5, 280],
      [0.5, 0],
    ],
    sampleInformation: 20,
  },
  {
    name: "Samuelson & Marks's well, a test that cannot change the action",
    prior: [0.4, 0.6],
    pay: [
      [600, -200],
      [0, 0],
    ],
    likelihoods: [
      [1 / 4, 1 / 6],
      [3 / 4, 5 / 6],
    ],
    answers: [
      [0.2, 200],
      [0.8, 100],
    ],
    sampleInformation: 0,
  },
  {
    name: "the manual's well, seismic soundings",
    prior: [0.5, 0.3, 0.2],
    pay: [
      [-310, 390, 890],
      [0, 0, 0],
    ],
    likelihoods: [
      [0.6, 0.3, 0.1],
      [0.3, 0.4, 0.4],
      [0.1, 0.3, 0.5],
    ],
    answers: [
      [0.41, 0],
      [0.35, 204.28571428571428],
      [0.24, 452.5],
    ],
    sampleInformation: 40.1,
  },
];

function expected(pay: readonly number[], weights: ArrayLike<number>): number {
  return pay.reduce((sum, one, state) => sum + one * weights[state]!, 0);
}

/** The answers as the engine takes them: what is chosen after each, and what the action best beforehand is worth then. */
function answersOf(
  prior: readonly number[],
  pay: readonly (readonly number[])[],
  likelihoods: readonly (readonly number[])[],
) {
  const before = pay.map((row) => expected(row, prior));
  const kept = before.indexOf(Math.max(...before));
  return likelihoods.map((likelihood) => {
    const { chance, weights } = updated(Float64Array.from(prior), likelihood);
    const after = pay.map((row) => expected(row, weights));
    return { chance, chosen: Math.max(...after), kept: after[kept]! };
  });
}

describe("the value of sample information in published decisions (see SOURCE.md)", () => {
  test.each(EXAMPLES)("$name: $sampleInformation", (example) => {
    const answers = answersOf(example.prior, example.pay, example.likelihoods);
    answers.forEach(({ chance, chosen }, at) => {
      expect(chance).toBeCloseTo(example.answers[at]![0], 12);
      expect(chosen).toBeCloseTo(example.answers[at]![1], 10);
    });
    expect(sampleInformation(answers)).toBeCloseTo(example.sampleInformation, 10);
  });

  test.each([
    { mean: 10, sd: 40, noise: 30, count: 1, value: 8.38447658305766 },
    { mean: -15, sd: 25, noise: 20, count: 2, value: 3.1654657782286663 },
  ])("two actions, a normal prior of $mean and $sd, a mean of $count with noise $noise: $value", (one) => {
    // After the sample the mean is normal with this deviation; its equal slices are the answers.
    const spread = one.sd * Math.sqrt(one.sd ** 2 / (one.sd ** 2 + one.noise ** 2 / one.count));
    const slices = 2 ** 15;
    const answers = Array.from({ length: slices }, (_, i) => {
      const mean = one.mean + spread * normalQuantile((i + 0.5) / slices);
      return { chance: 1 / slices, chosen: Math.max(0, mean), kept: one.mean > 0 ? mean : 0 };
    });
    expect(Math.abs(sampleInformation(answers) - one.value)).toBeLessThan(1e-4 * one.sd);
  });
});

/** Tests of a series system, stopped at the first failure; the order is by cost over chance of failure, rising (Mitten 1960). */
const SERIES = [
  {
    cost: [5, 2, 8, 3],
    fails: [0.2, 0.05, 0.4, 0.1],
    order: [2, 0, 3, 1],
    expectedCost: 13.304,
    asGiven: 14.048,
  },
  {
    cost: [1, 4, 2, 6, 3],
    fails: [0.02, 0.3, 0.1, 0.5, 0.05],
    order: [3, 1, 2, 0, 4],
    expectedCost: 9.9411,
    asGiven: 10.9225,
  },
] as const;

describe("independent tests for a fault that ends the matter", () => {
  test.each(SERIES)(
    "are made in the order $order: by value for each unit of cost",
    ({ cost, fails, order, ...costs }) => {
      // Whoever goes ahead loses the same whichever of them fails.
      const loss = 100;
      const value = fails.map((chance) =>
        sampleInformation([
          { chance, chosen: 0, kept: -loss },
          { chance: 1 - chance, chosen: 40, kept: 40 },
        ]),
      );
      const places = [...cost.keys()].sort((a, b) => value[b]! / cost[b]! - value[a]! / cost[a]!);
      expect(places).toEqual(order);
      expect(costOf(places)).toBeCloseTo(costs.expectedCost, 10);
      expect(costOf([...cost.keys()])).toBeCloseTo(costs.asGiven, 10);

      function costOf(sequence: readonly number[]): number {
        let reached = 1;
        let total = 0;
        for (const test of sequence) {
          total += reached * cost[test]!;
          reached *= 1 - fails[test]!;
        }
        return total;
      }
    },
  );
});
