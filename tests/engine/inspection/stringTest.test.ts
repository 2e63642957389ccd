import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { alignmentDifference, rearAxleOffset } from "../../../worker/engine/inspection/stringTest.ts";

type Point = readonly [x: number, y: number];

/** Where the straight line through two points crosses x. */
function at(x: number, [x0, y0]: Point, [x1, y1]: Point): number {
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/**
 * The string test drawn in plan view: x along the bike from the head tube, y to the drive side. Each string runs from the
 * side of the head tube to the outer face of its dropout; a ruler is held across the bike at the seat tube.
 */
function drawn(frame: Frame): { left: number; right: number } {
  const { head, seat, axle, seatAt, spread, offset } = frame;
  const right = at(seatAt, [0, head], [axle, offset + spread / 2]) - seat;
  const left = -at(seatAt, [0, -head], [axle, offset - spread / 2]) - seat;
  return { left, right };
}

/** The same with the string lying on the round head tube, and the shortest distance to the round seat tube. */
function laidRound(frame: Frame): { left: number; right: number } {
  const { head, seat, axle, seatAt, spread, offset } = frame;
  const gap = (end: Point, sign: number) => {
    // Tangent from the dropout to the circle of the head tube, on the side `sign`.
    const distance = Math.hypot(...end);
    const angle = Math.atan2(end[1], end[0]) + sign * Math.acos(head / distance);
    const touch: Point = [head * Math.cos(angle), head * Math.sin(angle)];
    const [dx, dy] = [end[0] - touch[0], end[1] - touch[1]];
    return Math.abs(dx * (0 - touch[1]) - dy * (seatAt - touch[0])) / Math.hypot(dx, dy) - seat;
  };
  return { right: gap([axle, offset + spread / 2], 1), left: gap([axle, offset - spread / 2], -1) };
}

interface Frame {
  head: number;
  seat: number;
  axle: number;
  seatAt: number;
  spread: number;
  offset: number;
}

const frames: fc.Arbitrary<Frame> = fc
  .record({
    head: fc.double({ min: 15, max: 30, noNaN: true }),
    seat: fc.double({ min: 12.7, max: 17.5, noNaN: true }),
    axle: fc.double({ min: 850, max: 1150, noNaN: true }),
    t: fc.double({ min: 0.5, max: 0.65, noNaN: true }),
    spread: fc.double({ min: 110, max: 150, noNaN: true }),
    offset: fc.double({ min: -15, max: 15, noNaN: true }),
  })
  .map(({ t, axle, ...rest }) => ({ ...rest, axle, seatAt: t * axle }));

describe("the string test", () => {
  test("recovers the offset at the axle of any drawn frame, whatever its tubes", () => {
    fc.assert(
      fc.property(frames, (frame) => {
        const lengths = { headToSeatTube: frame.seatAt, headToAxle: frame.axle };
        expect(rearAxleOffset({ ...drawn(frame), ...lengths }, 0.58)).toBeCloseTo(frame.offset, 9);
      }),
    );
  });

  test("is good to a quarter of a millimetre, far below a ruler's, where the string lies on a round head tube", () => {
    fc.assert(
      fc.property(frames, (frame) => {
        const lengths = { headToSeatTube: frame.seatAt, headToAxle: frame.axle };
        const found = rearAxleOffset({ ...laidRound(frame), ...lengths }, 0.58);
        expect(Math.abs(found - frame.offset)).toBeLessThan(0.25);
      }),
    );
  });

  test("worked by hand: 41 mm left, 43 mm right is 1.72 mm to the drive side", () => {
    expect(rearAxleOffset({ left: 41, right: 43 }, 0.58)).toBeCloseTo(2 / 1.16, 12);
  });

  test("without lengths the quantity held against the limits is the difference itself, to the last bit", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1500 }), fc.integer({ min: 0, max: 1500 }), (l, r) => {
        expect(alignmentDifference({ left: l / 10, right: r / 10 }, 0.58)).toBe(Math.abs(r / 10 - l / 10));
      }),
    );
  });

  test("with lengths it is 1.16 times the offset", () => {
    fc.assert(
      fc.property(frames, (frame) => {
        const test = { ...drawn(frame), headToSeatTube: frame.seatAt, headToAxle: frame.axle };
        expect(alignmentDifference(test, 0.58)).toBeCloseTo(1.16 * Math.abs(frame.offset), 8);
      }),
    );
  });

  test("one length alone, or a seat tube behind the axle, is refused by name", () => {
    const sides = { left: 40, right: 40 };
    expect(() => rearAxleOffset({ ...sides, headToAxle: 1000 }, 0.58)).toThrow(/^headToSeatTube requires/);
    expect(() => rearAxleOffset({ ...sides, headToSeatTube: 560 }, 0.58)).toThrow(/^headToAxle requires/);
    expect(() => rearAxleOffset({ ...sides, headToSeatTube: 1000, headToAxle: 1000 }, 0.58)).toThrow(
      /less than headToAxle \(1000 mm\)/,
    );
  });
});
