import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { elongation, glassOver, lengthAt, underGlass } from "../../../dashboard/drawings/chainRuler.ts";
import { derivedValue, possibleReadings } from "../../../dashboard/drawings/derived.ts";
import { dropoutScene } from "../../../dashboard/drawings/dropouts.ts";
import { bandsOf, placeOn } from "../../../dashboard/drawings/gauge.ts";
import { FRAME, stringScene } from "../../../dashboard/drawings/stringTest.ts";
import { derivedQuantity } from "../../../worker/engine/inspection/derivedQuantity.ts";
import { rearAxleOffset } from "../../../worker/engine/inspection/stringTest.ts";
import { referenceOf } from "../fixtures/service.ts";

/** As read: to the tenth of a millimetre. */
const reading = fc.integer({ min: 0, max: 1500 }).map((tenths) => tenths / 10);
const ratio = fc.double({ min: 0.3, max: 0.9, noNaN: true });

test("a reading that no bicycle has is not drawn", () => {
  const input = (id: string) => ({ id, label: id, unit: "mm" as const, min: 0, max: 150, optional: false });
  const inputs = [input("left"), input("right")];
  expect(possibleReadings({ inputs }, { left: 150, right: 43 })).toEqual({ left: 150, right: 43 });
  expect(possibleReadings({ inputs }, { right: 43 })).toEqual({ right: 43 });
  expect(possibleReadings({ inputs }, { left: 900, right: 43 })).toEqual({});
  expect(possibleReadings({ inputs }, { left: 38, right: -1 })).toEqual({});
});

describe("the string test's drawing", () => {
  test("says the offset that the engine works out", () => {
    fc.assert(
      fc.property(reading, reading, ratio, (left, right, t) => {
        expect(stringScene({ left, right, ratio: t }).offset).toBeCloseTo(
          rearAxleOffset({ left, right }, t),
          9,
        );
      }),
    );
  });

  test("bends to the side of the offset, by a whole number of times, and stays on the paper", () => {
    fc.assert(
      fc.property(reading, reading, ratio, (left, right, t) => {
        const { offset, shift, times } = stringScene({ left, right, ratio: t });
        expect(Math.sign(shift)).toBe(Math.sign(offset));
        expect(Number.isInteger(times) && times >= 1 && times <= 18).toBe(true);
        expect(Math.abs(shift)).toBeLessThanOrEqual(46);
      }),
    );
  });

  test("5 mm apart is 4.31 mm at the axle, drawn 18 times; four times that is drawn less often", () => {
    const at = (right: number) => stringScene({ left: 0, right, ratio: 0.58 });
    expect(at(5)).toMatchObject({ times: 18 });
    expect(at(5).offset).toBeCloseTo(4.31, 2);
    expect(at(20).times).toBeLessThan(18);
  });

  test("draws the string straight: its distance from the middle at the seat tube differs between the sides by the bend's share", () => {
    const { leftStringY, rightStringY, shift } = stringScene({ left: 38, right: 43, ratio: 0.58 });
    const left = FRAME.middleY - leftStringY;
    const right = rightStringY - FRAME.middleY;
    expect(right - left).toBeCloseTo(2 * 0.58 * shift, 9);
  });

  test("equal readings leave it straight", () => {
    expect(stringScene({ left: 40, right: 40, ratio: 0.58 })).toMatchObject({ offset: 0, shift: 0 });
  });
});

describe("the chain's ruler", () => {
  const CHAIN = { pitches: 24, pitch: 12.7 };

  // 12 1/16 in over 24 half-inch pitches (ISO 606): 0.52 %.
  test("12 1/16 in over 24 pitches is 0.52 % longer than new", () => {
    expect(elongation({ ...CHAIN, length: 306.3875 })).toBeCloseTo(0.52, 2);
    expect(lengthAt(0, CHAIN)).toBeCloseTo(304.8, 9);
  });

  test("the pin moves with the length, inside the glass", () => {
    const glass = glassOver([0.5, 0.75, 1], CHAIN);
    expect(glass.from).toBeLessThan(304.8);
    expect(glass.to).toBeGreaterThan(lengthAt(1, CHAIN));
    expect(underGlass(305.8, glass)).toBeGreaterThan(underGlass(304.8, glass));
    expect(underGlass(400, glass)).toBe(1);
    expect(underGlass(200, glass)).toBe(0);
  });
});

describe("hub and dropouts", () => {
  test("the difference is enlarged a whole number of times, and its sign kept", () => {
    expect(dropoutScene(126, 130)).toMatchObject({ difference: 4, times: 6 });
    expect(dropoutScene(130, 126).halfHub).toBeLessThan(80);
    const wide = dropoutScene(100, 200);
    expect(wide).toMatchObject({ times: 1 });
    expect(wide.halfHub).toBeLessThanOrEqual(114);
  });
});

describe("the scale of levels", () => {
  const LIMITS = bandsOf([
    { level: "far", from: 8, below: null },
    { level: "true", from: 0, below: 2 },
    { level: "slight", from: 2, below: 4 },
    { level: "out", from: 4, below: 8 },
  ]);

  test("bands stand in ascending order, each as wide as another", () => {
    expect(LIMITS.map(({ level }) => level)).toEqual(["true", "slight", "out", "far"]);
    expect(placeOn(LIMITS, 2)).toBe(0.25);
    expect(placeOn(LIMITS, 3)).toBe(0.375);
    expect(placeOn(LIMITS, 8)).toBe(0.75);
  });

  test("a larger value stands further along, and none runs off the scale", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), (value) => {
        expect(placeOn(LIMITS, value)).toBeLessThanOrEqual(placeOn(LIMITS, value + 1));
        expect(placeOn(LIMITS, value)).toBeLessThan(1);
      }),
    );
  });

  test("open at both ends: a surplus stands on its side of nought", () => {
    const surplus = bandsOf([
      { level: "ok", from: 0, below: null },
      { level: "short", from: null, below: 0 },
    ]);
    expect(surplus.map(({ level }) => level)).toEqual(["short", "ok"]);
    expect(placeOn(surplus, -5)).toBeLessThan(0.5);
    expect(placeOn(surplus, 0)).toBe(0.5);
    expect(placeOn(surplus, 5)).toBeGreaterThan(0.5);
  });
});

describe("the quantity that a drawing marks", () => {
  test("is the one the engine holds against the limits, for every measured check", async () => {
    const { checks } = await referenceOf();
    const measured = checks.flatMap(({ measurement }) => measurement ?? []);
    expect(measured.length).toBeGreaterThan(10);
    for (const measurement of measured) {
      const readings = Object.fromEntries(
        measurement.inputs
          .filter(({ optional }) => !optional)
          .map(({ id, min, max }, i) => [id, Math.round(min + (max - min) * (0.98 - i / 10))]),
      );
      expect(derivedValue(measurement, readings)).toBeCloseTo(
        derivedQuantity(measurement, readings).value,
        6,
      );
      expect(derivedValue(measurement, {})).toBeUndefined();
    }
  });

  test("takes the frame's own lengths where they can be", async () => {
    const { checks } = await referenceOf();
    const measurement = checks.find(({ id }) => id === "rear-alignment")!.measurement!;
    const readings = { left: 38, right: 43, headToSeatTube: 500, headToAxle: 1000 };
    expect(derivedValue(measurement, readings)).toBeCloseTo(derivedQuantity(measurement, readings).value, 9);
    expect(derivedValue(measurement, { ...readings, headToSeatTube: 2000 })).toBeCloseTo(5, 9);
  });
});
