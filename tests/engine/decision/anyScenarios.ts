import fc from "fast-check";
import type { ScenarioBenefits } from "../../../worker/engine/decision/scenarioBenefits.ts";

/** Whole numbers for figures, so that ties and equal lines turn up. */
export const anyScenarios: fc.Arbitrary<ScenarioBenefits> = fc
  .record({
    count: fc.integer({ min: 1, max: 6 }),
    courses: fc.integer({ min: 1, max: 5 }),
    logMedian: fc.double({ min: -1, max: 1, noNaN: true }),
    logSd: fc.oneof(
      { arbitrary: fc.double({ min: 0.02, max: 1.2, noNaN: true }), weight: 4 },
      fc.constant(0),
    ),
  })
  .chain(({ count, courses, logMedian, logSd }) => {
    const figures = (min: number, max: number) =>
      fc.array(fc.integer({ min, max }), { minLength: count * courses, maxLength: count * courses });
    return fc
      .record({
        slopes: figures(0, 12),
        offsets: figures(-12, 3),
        weights: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: count, maxLength: count }),
      })
      .map(({ slopes, offsets, weights }) => ({
        courses,
        slopes: Float64Array.from(slopes, (slope) => 25 * slope),
        offsets: Float64Array.from(offsets, (offset) => 15 * offset),
        weights: Float64Array.from(weights),
        priceFactor: { logMedian, logSd },
      }));
  });

/** The lines of one scenario at a price factor. */
export function benefitsAt({ courses, slopes, offsets }: ScenarioBenefits, s: number, y: number): number[] {
  return Array.from(
    { length: courses },
    (_, course) => slopes[s * courses + course]! * y + offsets[s * courses + course]!,
  );
}

/** The place of the greatest, the chosen one where it is among them. */
export function bestOf(benefits: readonly number[], chosen: number): number {
  const most = Math.max(...benefits);
  return benefits[chosen] === most ? chosen : benefits.indexOf(most);
}
