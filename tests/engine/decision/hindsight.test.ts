import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { withHindsight } from "../../../worker/engine/decision/hindsight.ts";
import type { ScenarioBenefits } from "../../../worker/engine/decision/scenarioBenefits.ts";
import { logNormalCdf, logNormalMean } from "../../../worker/engine/statistics/logNormal.ts";
import { normalQuantile } from "../../../worker/engine/statistics/standardNormal.ts";
import { logNormalPartialMean } from "../statistics/logNormalPartialMean.ts";
import { anyScenarios, benefitsAt, bestOf } from "./anyScenarios.ts";
import { uniforms } from "./drawnOutcomes.ts";

const SEED = 20261126;
const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);

/** Restore, make safe, sell as found, leave, in four states of a bike: invented. */
const BIKE: ScenarioBenefits = {
  courses: 4,
  slopes: Float64Array.of(240, 170, 75, 0, 240, 170, 75, 0, 230, 165, 70, 0, 0, 0, 30, 0),
  offsets: Float64Array.of(-150, -95, -12, -2, -190, -130, -12, -2, -260, -150, -12, -2, -60, -50, -12, -2),
  weights: Float64Array.of(4, 3, 2, 1),
  priceFactor: { logMedian: -0.04, logSd: 0.28 },
};

/** The same by cutting y at every crossing of two lines and asking in the middle of each piece who leads there. */
function byPieces(scenarios: ScenarioBenefits, chosen: number) {
  const { courses, slopes, offsets, weights, priceFactor } = scenarios;
  const total = sum(weights);
  const mean = logNormalMean(priceFactor);
  const shares = new Array<number>(courses).fill(0);
  const expected = new Array<number>(courses).fill(0);
  let expectedBest = 0;
  weights.forEach((weight, s) => {
    const [a, b] = [slopes.subarray(s * courses), offsets.subarray(s * courses)];
    const cuts = new Set([0]);
    for (let i = 0; i < courses; i++) {
      expected[i]! += (weight / total) * (a[i]! * mean + b[i]!);
      for (let j = 0; j < i; j++) {
        const crossing = (b[j]! - b[i]!) / (a[i]! - a[j]!);
        if (crossing > 0 && crossing < Infinity) cuts.add(crossing);
      }
    }
    const rising = [...cuts].sort((one, other) => one - other);
    rising.forEach((low, place) => {
      const high = rising[place + 1] ?? Infinity;
      const inside = high < Infinity ? (low + high) / 2 : low + 1;
      const leader = bestOf(benefitsAt(scenarios, s, inside), chosen);
      const chance = logNormalCdf(priceFactor, high) - logNormalCdf(priceFactor, low);
      shares[leader]! += (weight / total) * chance;
      expectedBest +=
        (weight / total) * (a[leader]! * logNormalPartialMean(priceFactor, low, high) + b[leader]! * chance);
    });
  });
  return { expected, shares, expectedBest, perfectInformation: expectedBest - Math.max(...expected) };
}

describe("the choice with hindsight", () => {
  test("is that of cutting the price at every crossing and asking who leads in between", () => {
    fc.assert(
      fc.property(anyScenarios, fc.nat(), (scenarios, place) => {
        const chosen = place % scenarios.courses;
        const known = withHindsight(scenarios, chosen);
        const other = byPieces(scenarios, chosen);
        known.expected.forEach((one, course) => {
          expect(one).toBeCloseTo(other.expected[course]!, 9);
        });
        expect(known.expectedBest).toBeCloseTo(other.expectedBest, 8);
        expect(known.perfectInformation).toBeCloseTo(other.perfectInformation, 8);
        // Where y is known and lies on a crossing, both are best; the sum below holds for them all the same.
        if (scenarios.priceFactor.logSd > 0)
          known.shares.forEach((share, course) => {
            expect(share).toBeCloseTo(other.shares[course]!, 10);
          });
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("is that of a fine grid of prices", () => {
    const { priceFactor, weights } = BIKE;
    const points = 40_000;
    const shares = [0, 0, 0, 0];
    let expectedBest = 0;
    for (let i = 0; i < points; i++) {
      const y = Math.exp(priceFactor.logMedian + priceFactor.logSd * normalQuantile((i + 0.5) / points));
      weights.forEach((weight, s) => {
        const benefits = benefitsAt(BIKE, s, y);
        const leader = bestOf(benefits, 1);
        shares[leader]! += weight / 10 / points;
        expectedBest += (weight / 10 / points) * benefits[leader]!;
      });
    }
    const known = withHindsight(BIKE, 1);
    expect(Math.abs(known.expectedBest - expectedBest)).toBeLessThan(5e-3);
    known.shares.forEach((share, course) => {
      expect(Math.abs(share - shares[course]!)).toBeLessThan(5e-5);
    });
    expect(known.confidence).toBe(known.shares[1]);
    expect(known.perfectInformation).toBeGreaterThan(5);
  });

  test("is that of 100 000 bikes drawn one by one, within four standard errors", () => {
    const count = 100_000;
    const next = uniforms(SEED);
    const { priceFactor } = BIKE;
    const known = withHindsight(BIKE, 1);
    const best = known.expected.indexOf(Math.max(...known.expected));
    const right = [0, 0, 0, 0];
    let [regret, squares] = [0, 0];
    for (let i = 0; i < count; i++) {
      const u = 10 * next();
      const s = u < 4 ? 0 : u < 7 ? 1 : u < 9 ? 2 : 3;
      const z = Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
      const benefits = benefitsAt(BIKE, s, Math.exp(priceFactor.logMedian + priceFactor.logSd * z));
      right[bestOf(benefits, 1)]!++;
      const missed = Math.max(...benefits) - benefits[best]!;
      regret += missed / count;
      squares += missed ** 2 / count;
    }
    const error = Math.sqrt((squares - regret ** 2) / count);
    expect(Math.abs(regret - known.perfectInformation)).toBeLessThan(4 * error);
    known.shares.forEach((share, course) => {
      const errors = 4 * Math.sqrt((share * (1 - share)) / count) + 1 / count;
      expect(Math.abs(right[course]! / count - share)).toBeLessThan(errors);
    });
  });
});

describe("whatever the scenarios", () => {
  const law = (holds: (scenarios: ScenarioBenefits, chosen: number) => void) =>
    fc.assert(
      fc.property(anyScenarios, fc.nat(), (scenarios, place) => holds(scenarios, place % scenarios.courses)),
      { seed: SEED, numRuns: 500 },
    );

  test("knowing is worth nothing or more, shares lie in 0 to 1 and sum to 1", () => {
    law((scenarios, chosen) => {
      const { perfectInformation, shares, confidence } = withHindsight(scenarios, chosen);
      expect(perfectInformation).toBeGreaterThanOrEqual(0);
      expect(sum(shares)).toBeCloseTo(1, 12);
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...shares)).toBeLessThanOrEqual(1);
      expect(confidence).toBe(shares[chosen]);
    });
  });

  test("knowing is worth exactly nothing where one course is never beaten, and that course is certain", () => {
    law((scenarios, chosen) => {
      const { courses } = scenarios;
      const [slopes, offsets] = [scenarios.slopes.slice(), scenarios.offsets.slice()];
      scenarios.weights.forEach((_, s) => {
        const of = (figures: Float64Array) => figures.subarray(s * courses, (s + 1) * courses);
        slopes[s * courses + chosen] = Math.max(...of(slopes));
        offsets[s * courses + chosen] = Math.max(...of(offsets));
      });
      const known = withHindsight({ ...scenarios, slopes, offsets }, chosen);
      expect(known.perfectInformation).toBe(0);
      expect(known.confidence).toBeCloseTo(1, 12);
    });
  });

  test("a further course never lowers what the best of them brings", () => {
    law((scenarios, chosen) => {
      const { courses } = scenarios;
      fc.pre(courses > 1);
      const fewer = (figures: Float64Array) => figures.filter((_, i) => i % courses !== courses - 1);
      const less = withHindsight(
        {
          ...scenarios,
          courses: courses - 1,
          slopes: fewer(scenarios.slopes),
          offsets: fewer(scenarios.offsets),
        },
        Math.min(chosen, courses - 2),
      );
      const all = withHindsight(scenarios, chosen);
      expect(all.expectedBest).toBeGreaterThanOrEqual(less.expectedBest - 1e-9);
    });
  });

  test("scaling the weights changes nothing; splitting a scenario in two changes nothing", () => {
    law((scenarios, chosen) => {
      const once = withHindsight(scenarios, chosen);
      const twice = withHindsight(
        {
          ...scenarios,
          slopes: Float64Array.of(...scenarios.slopes, ...scenarios.slopes),
          offsets: Float64Array.of(...scenarios.offsets, ...scenarios.offsets),
          weights: Float64Array.of(
            ...scenarios.weights.map((one) => 3 * one),
            ...scenarios.weights.map((one) => 7 * one),
          ),
        },
        chosen,
      );
      expect(twice.perfectInformation).toBeCloseTo(once.perfectInformation, 8);
      expect(twice.confidence).toBeCloseTo(once.confidence, 10);
    });
  });

  test("the same course twice counts once, for the one chosen", () => {
    law((scenarios, chosen) => {
      const { courses } = scenarios;
      const doubled = (figures: Float64Array) =>
        Float64Array.from({ length: figures.length * 2 }, (_, i) => {
          const s = Math.floor(i / (2 * courses));
          return figures[s * courses + (i % courses)]!;
        });
      const known = withHindsight(
        {
          ...scenarios,
          courses: 2 * courses,
          slopes: doubled(scenarios.slopes),
          offsets: doubled(scenarios.offsets),
        },
        courses + chosen,
      );
      expect(known.shares[chosen]).toBe(0);
      expect(known.confidence).toBeCloseTo(withHindsight(scenarios, chosen).confidence, 12);
    });
  });
});

test("courses a hair apart make no nonsense", () => {
  for (const hair of [1e-17, -1e-17, 1e-300, 1e-12]) {
    const known = withHindsight(
      {
        courses: 3,
        slopes: Float64Array.of(100, 100 + hair, 0),
        offsets: Float64Array.of(hair, 0, -hair),
        weights: Float64Array.of(1),
        priceFactor: { logMedian: 0, logSd: 2 },
      },
      0,
    );
    expect(known.perfectInformation).toBeLessThan(1e-9);
    expect(sum(known.shares)).toBeCloseTo(1, 9);
    expect(known.shares[2]).toBeLessThan(1e-9);
  }
});

describe("what cannot be weighed is refused by name", () => {
  test.each([
    [{ slopes: new Float64Array(3) }, 0, "slopes requires 16 figures, got 3"],
    [{ offsets: new Float64Array(3) }, 0, "offsets requires 16 figures, got 3"],
    [{ weights: new Float64Array(4) }, 0, "weights requires numbers of at least 0 with a positive sum"],
    [{ weights: Float64Array.of(1, 1, -1, 1) }, 0, "weights requires"],
    [{ offsets: new Float64Array(16).fill(Number.NaN) }, 0, "course 0 requires finite figures, got NaN"],
    [{ priceFactor: { logMedian: 0, logSd: -1 } }, 0, "logSd requires a number of at least 0"],
    [{}, 4, "chosen requires the place of one of 4 courses, got 4"],
  ])("%o", (change, chosen, message) => {
    expect(() => withHindsight({ ...BIKE, ...change }, chosen)).toThrow(message);
  });
});
