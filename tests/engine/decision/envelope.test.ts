import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addedMarginPerAddedHour, type Point } from "../../../worker/engine/decision/envelope.ts";

const points = fc.array(
  fc.option(
    fc.record({
      hours: fc.integer({ min: 0, max: 40 }).map((n) => n / 4),
      margin: fc.integer({ min: -200, max: 400 }),
    }),
    { nil: null, freq: 6 },
  ),
  { minLength: 1, maxLength: 6 },
);

const netBenefit = ({ hours, margin }: Point, goal: number) => margin - goal * hours;

/** Going on from course to course, as long as the next hour earns the goal. Starts at the shortest course that is worth anything by itself. */
function chosenBySlope(all: readonly (Point | null)[], goal: number): Point {
  const added = addedMarginPerAddedHour(all);
  const open = all.flatMap((point, index) => (point ? [{ ...point, slope: added[index]! }] : []));
  const first = open.toSorted((a, b) => a.hours - b.hours || b.margin - a.margin)[0]!;
  const onward = open.filter(({ slope }) => slope !== null).sort((a, b) => a.hours - b.hours);
  return onward.reduce((here, next) => (next.slope! >= goal ? next : here), first as Point);
}

describe("added margin per added hour", () => {
  test("going on while the slope reaches the goal is choosing the highest net benefit, whatever the goal", () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 0, max: 100 }), (all, goal) => {
        fc.pre(all.some((point) => point !== null));
        const best = Math.max(...all.flatMap((point) => (point ? [netBenefit(point, goal)] : [])));
        expect(netBenefit(chosenBySlope(all, goal), goal)).toBeCloseTo(best, 9);
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });

  test("slopes fall from course to course along the envelope, and are positive", () => {
    fc.assert(
      fc.property(points, (all) => {
        const added = addedMarginPerAddedHour(all);
        const slopes = all
          .flatMap((point, index) =>
            point && added[index] !== null ? [{ hours: point.hours, slope: added[index]! }] : [],
          )
          .sort((a, b) => a.hours - b.hours)
          .map(({ slope }) => slope);
        expect(slopes.every((slope) => slope > 0)).toBe(true);
        for (let i = 1; i < slopes.length; i++) expect(slopes[i]!).toBeLessThanOrEqual(slopes[i - 1]!);
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  test("by hand: leave, sell, make safe, restore, and a course under the line", () => {
    // From (0, 0) to (2, 60): 30 an hour; to (6, 120): 15; to (10, 140): 5. Parts at (5, 50) lie below.
    const all = [
      { hours: 10, margin: 140 },
      { hours: 6, margin: 120 },
      { hours: 2, margin: 60 },
      { hours: 5, margin: 50 },
      { hours: 0, margin: 0 },
    ];
    expect(addedMarginPerAddedHour(all)).toEqual([5, 15, 30, null, null]);
  });

  test("a course that is closed has none and stands in nobody's way", () => {
    const open = [
      { hours: 2, margin: 60 },
      { hours: 0, margin: 0 },
    ];
    expect(addedMarginPerAddedHour([null, ...open])).toEqual([null, ...addedMarginPerAddedHour(open)]);
  });
});
