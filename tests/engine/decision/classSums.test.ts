import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { classSums } from "../../../worker/engine/decision/classSums.ts";
import type { Uncertainty, Way } from "../../../worker/engine/service/uncertainty.ts";
import { RESOURCES, uncertainty } from "./madeUpUncertainties.ts";

const CLASSES = 3;

/** Every joint outcome in one class in which the frame survives: a way of each uncertainty or nothing, with its chance. */
function survivingOutcomes(
  all: readonly Uncertainty[],
  z: number,
): readonly { readonly chance: number; readonly ways: readonly Way[] }[] {
  let outcomes: { chance: number; ways: readonly Way[] }[] = [{ chance: 1, ways: [] }];
  for (const { ways } of all) {
    const nothing = 1 - ways.reduce((sum, { chances }) => sum + chances[z]!, 0);
    const surviving = ways.filter(({ endsFrame }) => !endsFrame);
    outcomes = outcomes.flatMap((outcome) => [
      { ...outcome, chance: outcome.chance * nothing },
      ...surviving.map((way) => ({ chance: outcome.chance * way.chances[z]!, ways: [...outcome.ways, way] })),
    ]);
  }
  return outcomes;
}

/** Raw moments of a sum of independent amounts: mean, variance, third central moment from those of each. */
function momentsOf(outcomes: ReturnType<typeof survivingOutcomes>) {
  const survival = outcomes.reduce((sum, { chance }) => sum + chance, 0);
  const average = (of: (ways: readonly Way[]) => number) =>
    outcomes.reduce((sum, { chance, ways }) => sum + chance * of(ways), 0) / survival;
  const paid = (ways: readonly Way[]) => ways.reduce((sum, { money, told }) => sum + money.mean + told, 0);
  const worked = (ways: readonly Way[]) => ways.reduce((sum, { minutes }) => sum + minutes.mean, 0);
  const scatter = (ways: readonly Way[], of: "money" | "minutes") =>
    ways.reduce((sum, way) => sum + way[of].variance, 0);
  const [mean, minutes] = [average(paid), average(worked)];
  return {
    survival,
    mean,
    minutes,
    variance: average((ways) => (paid(ways) - mean) ** 2 + scatter(ways, "money")),
    // Each way's own amount is symmetric.
    third: average((ways) => (paid(ways) - mean) ** 3 + 3 * (paid(ways) - mean) * scatter(ways, "money")),
    minutesVariance: average((ways) => (worked(ways) - minutes) ** 2 + scatter(ways, "minutes")),
    covariance: average((ways) => (paid(ways) - mean) * (worked(ways) - minutes)),
  };
}

/** The same with every resource paid once in each outcome. */
function unionMomentsOf(outcomes: ReturnType<typeof survivingOutcomes>) {
  const survival = outcomes.reduce((sum, { chance }) => sum + chance, 0);
  const average = (of: (ways: readonly Way[]) => number) =>
    outcomes.reduce((sum, { chance, ways }) => sum + chance * of(ways), 0) / survival;
  const total = (ways: readonly Way[], of: "money" | "minutes", part: "mean" | "variance") =>
    [...new Set(ways.flatMap(({ resources }) => resources))].reduce(
      (sum, index) => sum + RESOURCES[index]![of][part],
      0,
    );
  const paid = (ways: readonly Way[]) =>
    total(ways, "money", "mean") + ways.reduce((sum, { told }) => sum + told, 0);
  const worked = (ways: readonly Way[]) => total(ways, "minutes", "mean");
  const [mean, minutes] = [average(paid), average(worked)];
  return {
    variance: average((ways) => (paid(ways) - mean) ** 2 + total(ways, "money", "variance")),
    minutesVariance: average((ways) => (worked(ways) - minutes) ** 2 + total(ways, "minutes", "variance")),
    covariance: average((ways) => (paid(ways) - mean) * (worked(ways) - minutes)),
  };
}

const four = (shares: boolean) =>
  fc.tuple(...["a", "b", "c", "d"].map((name) => uncertainty(name, CLASSES, shares)));

describe("what four uncertainties bring together, by class, against every joint outcome", () => {
  test("with nothing shared: survival, mean, variance, third moment, covariance", () => {
    fc.assert(
      fc.property(four(false), (all) => {
        const sums = classSums(all, new Set(), CLASSES, RESOURCES);
        for (let z = 0; z < CLASSES; z++) {
          const brute = momentsOf(survivingOutcomes(all, z));
          expect(sums.survival[z]).toBeCloseTo(brute.survival, 12);
          expect(sums.money[z]! + sums.told[z]!).toBeCloseTo(brute.mean, 8);
          expect(sums.minutes[z]).toBeCloseTo(brute.minutes, 8);
          expect(sums.variance[z]).toBeCloseTo(brute.variance, 6);
          expect(sums.third[z]! / 1e4).toBeCloseTo(brute.third / 1e4, 6);
          expect(sums.minutesVariance[z]).toBeCloseTo(brute.minutesVariance, 6);
          expect(sums.covariance[z]).toBeCloseTo(brute.covariance, 6);
        }
      }),
      { numRuns: 100 },
    );
  });

  test("with resources shared: each is paid once, so that means, variances and the covariance are those of the union", () => {
    fc.assert(
      fc.property(four(true), (all) => {
        const sums = classSums(all, new Set(), CLASSES, RESOURCES);
        for (let z = 0; z < CLASSES; z++) {
          const outcomes = survivingOutcomes(all, z);
          const survival = outcomes.reduce((sum, { chance }) => sum + chance, 0);
          const union = (of: "money" | "minutes") =>
            outcomes.reduce((sum, { chance, ways }) => {
              const used = new Set(ways.flatMap(({ resources }) => resources));
              return sum + chance * [...used].reduce((cost, index) => cost + RESOURCES[index]![of].mean, 0);
            }, 0) / survival;
          expect(sums.money[z]).toBeCloseTo(union("money"), 8);
          expect(sums.minutes[z]).toBeCloseTo(union("minutes"), 8);
          const brute = unionMomentsOf(outcomes);
          expect(sums.variance[z]).toBeCloseTo(brute.variance, 6);
          expect(sums.minutesVariance[z]).toBeCloseTo(brute.minutesVariance, 6);
          expect(sums.covariance[z]).toBeCloseTo(brute.covariance, 6);
        }
      }),
      { numRuns: 100 },
    );
  });

  test("what ends the frame is spent on average as its chances weigh it", () => {
    const way = (chance: number, money: number): Way => ({
      rank: 1,
      chances: Float64Array.of(chance),
      endsFrame: true,
      money: { mean: money, variance: 0 },
      minutes: { mean: 2 * money, variance: 0 },
      told: 0,
      resources: [],
      takes: [],
      penalty: 0,
      spares: [],
      early: { money: { mean: 0, variance: 0 }, minutes: { mean: 0, variance: 0 } },
    });
    const one = (chance: number, money: number): Uncertainty => ({
      of: "x",
      job: null,
      resource: null,
      opening: [],
      ways: [way(chance, money)],
    });
    const sums = classSums([one(0.1, 30), one(0.3, 10)], new Set(), 1, RESOURCES);
    expect(sums.endMoney[0]).toBeCloseTo((0.1 * 30 + 0.3 * 10) / 0.4, 12);
    expect(sums.endMinutes[0]).toBeCloseTo((0.1 * 60 + 0.3 * 20) / 0.4, 12);
    expect(sums.survival[0]).toBeCloseTo(0.9 * 0.7, 12);
  });
});
