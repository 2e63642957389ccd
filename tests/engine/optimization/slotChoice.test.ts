import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseSlots } from "../../../worker/engine/optimization/slotChoice.ts";
import type { SlotProblem } from "../../../worker/engine/optimization/slotProblem.ts";

/** A value that is exponential in a piecewise linear curve, as price is in condition, held between 0 and 1. */
interface Curve {
  readonly start: number;
  readonly slopes: readonly [number, number, number];
  readonly top: number;
}

function valueAlong({ start, slopes: [low, middle, high], top }: Curve): (gain: number) => number {
  const log = (c: number) => {
    const held = Math.min(1, Math.max(0, c));
    return (
      low * Math.min(held, 0.3) +
      middle * Math.max(0, Math.min(held, 0.6) - 0.3) +
      high * Math.max(0, held - 0.6)
    );
  };
  return (gain) => top * Math.exp(log(start + gain) - log(1));
}

const problems = fc
  .record({
    costs: fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 3, maxLength: 14 }),
    curve: fc.record({
      start: fc.double({ min: -0.5, max: 0.8, noNaN: true }),
      slopes: fc.tuple(
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
      ),
      top: fc.double({ min: 5, max: 100, noNaN: true }),
    }),
    slots: fc.array(
      fc.record({
        gain: fc.constantFrom(0, 0.03, 0.1, 0.18, 0.3),
        mandatory: fc.boolean(),
        options: fc.array(fc.uniqueArray(fc.nat(13), { minLength: 1, maxLength: 4 }), {
          minLength: 1,
          maxLength: 3,
        }),
      }),
      { maxLength: 8 },
    ),
    base: fc.uniqueArray(fc.nat(13), { maxLength: 2 }),
  })
  .map(({ costs, curve, slots, base }): SlotProblem => {
    const fit = (resource: number) => resource % costs.length;
    const steepest = Math.max(...curve.slopes);
    return {
      cost: costs,
      base: [...new Set(base.map(fit))],
      value: valueAlong(curve),
      slots: slots.map(({ gain, mandatory, options }) => ({
        gain,
        mandatory,
        options: options.map((option) => [...new Set(option.map(fit))]),
        largestMarginal: curve.top * -Math.expm1(-steepest * gain),
      })),
    };
  });

/** Every combination, one by one. */
function bestByEnumeration({ slots, cost, base, value }: SlotProblem): number {
  let best = -Infinity;
  const visit = (place: number, gain: number, used: ReadonlySet<number>) => {
    const slot = slots[place];
    if (!slot) {
      const spent = [...used].reduce((sum, resource) => sum + cost[resource]!, 0);
      best = Math.max(best, value(gain) - spent);
      return;
    }
    if (!slot.mandatory) visit(place + 1, gain, used);
    for (const option of slot.options) visit(place + 1, gain + slot.gain, new Set([...used, ...option]));
  };
  visit(0, 0, new Set(base));
  return best;
}

function objectiveOf({ slots, cost, base, value }: SlotProblem, choice: readonly number[]): number {
  const used = new Set(base);
  let gain = 0;
  choice.forEach((option, place) => {
    if (option < 0) return;
    gain += slots[place]!.gain;
    for (const resource of slots[place]!.options[option]!) used.add(resource);
  });
  return value(gain) - [...used].reduce((sum, resource) => sum + cost[resource]!, 0);
}

describe("the choice of one option in each slot", () => {
  test("is worth what the best of all combinations is worth", () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const solution = chooseSlots(problem)!;
        expect(solution.objective).toBeCloseTo(bestByEnumeration(problem), 7);
      }),
      { numRuns: 600, seed: 1 },
    );
  });

  test("is worth what its choice says, and settles every mandatory slot", () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const { choice, objective } = chooseSlots(problem)!;
        expect(objectiveOf(problem, choice)).toBeCloseTo(objective, 7);
        problem.slots.forEach(({ mandatory }, place) => {
          if (mandatory) expect(choice[place]).toBeGreaterThanOrEqual(0);
        });
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  test("does not depend on the order of the slots", () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const turned = { ...problem, slots: [...problem.slots].reverse() };
        expect(chooseSlots(turned)!.objective).toBeCloseTo(chooseSlots(problem)!.objective, 7);
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  test("a dearer resource never raises what is left", () => {
    fc.assert(
      fc.property(
        problems,
        fc.nat(13),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (problem, which, more) => {
          const cost = Array.from(problem.cost);
          cost[which % cost.length]! += more;
          expect(chooseSlots({ ...problem, cost })!.objective).toBeLessThanOrEqual(
            chooseSlots(problem)!.objective + 1e-9,
          );
        },
      ),
      { numRuns: 300, seed: 4 },
    );
  });

  test("two faults that share a step pay for it once", () => {
    const slot = { gain: 0.1, mandatory: true, largestMarginal: 10 };
    const problem = {
      cost: [1, 2, 4],
      base: [],
      value: () => 100,
      slots: [
        { ...slot, options: [[0, 2]] },
        { ...slot, options: [[1, 2]] },
      ],
    };
    expect(chooseSlots(problem)!.objective).toBe(93);
  });

  test("a mandatory slot without an option has no answer", () => {
    const slot = { gain: 0.1, mandatory: true, largestMarginal: 10, options: [] };
    expect(chooseSlots({ cost: [], base: [], value: () => 1, slots: [slot] })).toBeNull();
  });
});
