import fc from "fast-check";
import type { Resource } from "../../../worker/engine/service/resource.ts";
import { PLAIN } from "../../../worker/engine/service/stepResource.ts";
import type { Uncertainty, Way } from "../../../worker/engine/service/uncertainty.ts";

/** Four resources that made-up faults ask for: two jobs, a step, a tool. */
export const RESOURCES: readonly Resource[] = [
  { ...PLAIN, money: { mean: 11, variance: 4 }, minutes: { mean: 25, variance: 36 } },
  { ...PLAIN, money: { mean: 3, variance: 1 }, minutes: { mean: 40, variance: 100 } },
  { ...PLAIN, kind: "step", minutes: { mean: 14, variance: 9 } },
  { ...PLAIN, kind: "tool", money: { mean: 8, variance: 0 } },
];

const amount = (max: number) => fc.double({ min: 0, max, noNaN: true });

/** A way as it is drawn: parts of a chance by class, and what it brings. */
const drawnWay = (classes: number, shares: boolean) =>
  fc.record({
    parts: fc.array(amount(1), { minLength: classes, maxLength: classes }),
    endsFrame: fc.boolean(),
    money: amount(90),
    minutes: amount(240),
    variance: amount(50),
    told: amount(30),
    resources: shares ? fc.subarray([0, 1, 2, 3]) : fc.constant([] as number[]),
  });

/**
 * A made-up uncertainty: one to three ways that exclude each other in every class. Where resources are shared, what a way brings are its resources' costs,
 * beside what is told.
 */
export function uncertainty(name: string, classes: number, shares: boolean): fc.Arbitrary<Uncertainty> {
  return fc
    .record({
      ways: fc.array(drawnWay(classes, shares), { minLength: 1, maxLength: 3 }),
      none: fc.array(amount(1), { minLength: classes, maxLength: classes }),
      paired: fc.boolean(),
      opening: shares ? fc.subarray([2]) : fc.constant([] as number[]),
    })
    .map(({ ways, none, opening, paired }) => {
      const whole = none.map((one, z) => 1e-3 + one + ways.reduce((sum, { parts }) => sum + parts[z]!, 0));
      return {
        of: name,
        job: null,
        resource: null,
        opening,
        ways: ways.map(({ parts, endsFrame, money, minutes, variance, told, resources }, index): Way => {
          const used = endsFrame ? [] : resources;
          const total = (of: "money" | "minutes", part: "mean" | "variance") =>
            used.reduce((sum, index) => sum + RESOURCES[index]![of][part], 0);
          return {
            // Two ways of one level: the cure that ends the frame, and the one that does not.
            rank: paired ? 1 + (index >> 1) : 1 + index,
            chances: Float64Array.from(parts, (part, z) => part / whole[z]!),
            endsFrame,
            money:
              shares && !endsFrame
                ? { mean: total("money", "mean"), variance: total("money", "variance") }
                : { mean: money, variance: endsFrame ? 0 : variance },
            minutes:
              shares && !endsFrame
                ? { mean: total("minutes", "mean"), variance: total("minutes", "variance") }
                : { mean: minutes, variance },
            told: endsFrame ? 0 : told,
            resources: used,
            takes: [],
            penalty: 0,
            spares: [],
            early: { money: { mean: 0, variance: 0 }, minutes: { mean: 0, variance: 0 } },
          };
        }),
      };
    });
}
