import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseSlots, type SlotProblem } from "../../../worker/engine/optimization/slotChoice.ts";

/** Checked against enumeration of every combination of options: slow, and too simple to be wrong. */

const RESOURCES = 14;
const SEED = 20261125;

/** Worth of a choice: value of the gains less the union of the resources. */
function worth({ slots, cost, base, value }: SlotProblem, choice: readonly number[]): number {
  const used = new Set(base);
  let gain = 0;
  choice.forEach((option, place) => {
    if (option < 0) return;
    gain += slots[place]!.gain;
    for (const resource of slots[place]!.options[option]!) used.add(resource);
  });
  return [...used].reduce((left, resource) => left - cost[resource]!, value(gain));
}

function* everyChoice({ slots }: SlotProblem, place = 0): Generator<number[]> {
  const slot = slots[place];
  if (!slot) {
    yield [];
    return;
  }
  for (let option = slot.mandatory ? 0 : -1; option < slot.options.length; option++) {
    for (const rest of everyChoice({ slots } as SlotProblem, place + 1)) yield [option, ...rest];
  }
}

function bruteForce(problem: SlotProblem): number {
  let best = -Infinity;
  for (const choice of everyChoice(problem)) best = Math.max(best, worth(problem, choice));
  return best;
}

const CURVES = {
  concave: (scale: number) => (gain: number) => scale * (1 - Math.exp(-2 * gain)),
  convex: (scale: number) => (gain: number) => scale * (Math.exp(gain) - 1),
  flat: (scale: number) => () => scale,
} as const;

/** The steepest step of any size from any of the sums that can occur: what the caller must promise. */
function largestMarginal(value: (gain: number) => number, gain: number, most: number): number {
  let largest = 0;
  for (let from = 0; from <= most - gain + 1e-9; from += 0.05)
    largest = Math.max(largest, value(from + gain) - value(from));
  return largest + 1e-12;
}

const subset = fc.subarray(
  Array.from({ length: RESOURCES }, (_, index) => index),
  { maxLength: 5 },
);

function problems(slotCount: number, optionCount: number): fc.Arbitrary<SlotProblem> {
  return fc
    .record({
      // Hundredths of five keep sums exact enough for the grid of largestMarginal.
      slots: fc.array(
        fc.record({
          options: fc.array(subset, { maxLength: optionCount }),
          gain: fc.integer({ min: 0, max: 10 }).map((n) => n / 20),
          mandatory: fc.boolean(),
        }),
        { maxLength: slotCount },
      ),
      cost: fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 60 })), {
        minLength: RESOURCES,
        maxLength: RESOURCES,
      }),
      base: subset,
      curve: fc.constantFrom("concave", "convex", "flat" as const),
      scale: fc.integer({ min: 1, max: 400 }),
    })
    .map(({ slots, cost, base, curve, scale }) => {
      const value = CURVES[curve](scale);
      const most = slots.reduce((sum, { gain }) => sum + gain, 0);
      return {
        slots: slots.map((slot) => ({ ...slot, largestMarginal: largestMarginal(value, slot.gain, most) })),
        cost,
        base,
        value,
      };
    });
}

const solvable = (problem: SlotProblem) =>
  problem.slots.every(({ mandatory, options }) => !mandatory || options.length > 0);

describe("choosing options that share resources", () => {
  test.each([
    ["12 slots with one option", 12, 1, 120],
    ["7 slots with up to three options", 7, 3, 250],
    ["4 slots with up to six options", 4, 6, 150],
  ])("equals enumeration: %s", (_, slots, options, numRuns) => {
    fc.assert(
      fc.property(problems(slots, options).filter(solvable), (problem) => {
        const solution = chooseSlots(problem)!;
        expect(solution.objective).toBeCloseTo(bruteForce(problem), 7);
        expect(worth(problem, solution.choice)).toBeCloseTo(solution.objective, 7);
      }),
      { seed: SEED, numRuns },
    );
  });

  test("a mandatory slot is always settled; where it has no option there is no answer", () => {
    fc.assert(
      fc.property(problems(6, 2), (problem) => {
        const solution = chooseSlots(problem);
        expect(solution === null).toBe(!solvable(problem));
        problem.slots.forEach(({ mandatory }, index) => {
          if (solution && mandatory) expect(solution.choice[index]).toBeGreaterThanOrEqual(0);
        });
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("the names of the resources do not matter: permuting them leaves the worth as it is", () => {
    const shuffled = fc.shuffledSubarray(
      Array.from({ length: RESOURCES }, (_, index) => index),
      { minLength: RESOURCES, maxLength: RESOURCES },
    );
    fc.assert(
      fc.property(problems(8, 2).filter(solvable), shuffled, (problem, names) => {
        const renamed = {
          ...problem,
          slots: problem.slots.map((slot) => ({
            ...slot,
            options: slot.options.map((option) => option.map((resource) => names[resource]!)),
          })),
          base: problem.base.map((resource) => names[resource]!),
          cost: names.map((_, index) => problem.cost[names.indexOf(index)]!),
        };
        expect(chooseSlots(renamed)!.objective).toBeCloseTo(chooseSlots(problem)!.objective, 9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("the same problem has the same answer, ties included", () => {
    fc.assert(
      fc.property(problems(8, 3).filter(solvable), (problem) => {
        expect(chooseSlots(problem)).toEqual(chooseSlots(problem));
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test("a slot whose settling pays nothing is left, and of two equal options the first is taken", () => {
    const value = (gain: number) => 10 * gain;
    const slot = (options: number[][], gain: number) => ({
      options,
      gain,
      mandatory: false,
      largestMarginal: 10 * gain,
    });
    const solution = chooseSlots({
      slots: [slot([[0]], 0.3), slot([[1], [2]], 1)],
      cost: [3, 4, 4],
      base: [],
      value,
    });
    expect(solution).toMatchObject({ choice: [-1, 0], objective: 6 });
  });

  test("a step that two options share is paid once, and one that is done anyway not at all", () => {
    const value = (gain: number) => 10 * gain;
    const slot = (options: number[][]) => ({ options, gain: 1, mandatory: false, largestMarginal: 10 });
    // Alone each costs 12 and is left; together 16 for 20. Resource 3 is in the base.
    const apart = chooseSlots({ slots: [slot([[0, 1]])], cost: [8, 4, 4, 5], base: [3], value })!;
    const together = chooseSlots({
      slots: [slot([[0, 1]]), slot([[0, 2, 3]])],
      cost: [8, 4, 4, 5],
      base: [3],
      value,
    })!;
    expect(apart).toMatchObject({ choice: [-1], objective: -5 });
    expect(together).toMatchObject({ choice: [0, 0], objective: 20 - 16 - 5 });
  });
});
