import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lookAlikes } from "../../../worker/engine/inspection/lookAlikes.ts";
import { markedTyre } from "../../../worker/engine/inspection/markedTyre.ts";
import { readTyreMarking } from "../../../worker/engine/inspection/tyreMarking.ts";
import { TYRE_NAMES } from "./smallTables.ts";

const read = (marking: string) => markedTyre(marking, TYRE_NAMES);

describe("a marking taken apart", () => {
  // Widths as printed; the bead seats are those of ISO 5775.
  test.each([
    ["28-622", 28, "mm", 622],
    ["700x28C", 28, "mm", 622],
    ["700C x 25", 25, "mm", 622],
    ["26 x 1.75", 1.75, "in", 559],
    ["26 x 1 3/4", 1.75, "in", 571],
    ["26 x 1 3/8 (37-590)", 37, "mm", 590],
    ["27×1¼", 1.25, "in", 630],
    ["622x19C", 19, "mm", 622],
  ])("%s is %d %s wide on %d mm", (marking, value, unit, diameter) => {
    expect(read(marking)).toMatchObject({
      marking,
      reading: "one",
      width: { value, unit },
      beadSeatDiameterMm: diameter,
    });
  });

  test("of two fractions the lesser is the width, whichever stands first", () => {
    expect(read("28 x 1 5/8 x 1 3/8")?.width).toEqual({ value: 1.375, unit: "in" });
    expect(read("28 x 1 3/8 x 1 5/8")?.width).toEqual({ value: 1.375, unit: "in" });
  });

  test("without a width, without one answer, and without a bead says so", () => {
    expect(read("29er")).toMatchObject({ width: null, beadSeatDiameterMm: 622 });
    expect(read("26 in")).toMatchObject({ reading: "several", beadSeatDiameterMm: null, lookAlikes: [] });
    expect(read("26 in")?.candidates.map(({ diameterMm }) => diameterMm)).toContain(559);
    expect(read("tubular 28")).toMatchObject({ reading: "tubular", beadSeatDiameterMm: null });
    expect(read("33 x 1.75")).toMatchObject({ reading: "unlisted", candidates: [] });
    expect(read("blue")).toBeNull();
  });

  test("says the same bead seat as the reading that the findings come from", () => {
    const markings = fc
      .tuple(fc.integer({ min: 18, max: 99 }), fc.integer({ min: 137, max: 787 }))
      .map(([width, size]) => `${width}-${size}`);
    fc.assert(
      fc.property(markings, (marking) => {
        const reading = readTyreMarking(marking, TYRE_NAMES);
        expect(read(marking)?.beadSeatDiameterMm).toBe(reading.kind === "one" ? reading.diameterMm : null);
      }),
    );
  });
});

describe("sizes that look alike", () => {
  test("the decimal and the fraction of one width do not fit each other, and are named", () => {
    const [nearest] = read("26 x 1.75")!.lookAlikes;
    expect(nearest).toMatchObject({ diameterMm: 571 });
    expect(nearest!.names).toContain("26 x 1 3/4");
  });

  test("share a nominal name, never the diameter, each once, nearest first", () => {
    for (const diameter of new Set(TYRE_NAMES.map(({ diameterMm }) => diameterMm))) {
      const alike = lookAlikes(diameter, TYRE_NAMES).map(({ diameterMm }) => diameterMm);
      expect(new Set(alike).size).toBe(alike.length);
      expect(alike).not.toContain(diameter);
      const apart = alike.map((one) => Math.abs(one - diameter));
      expect(apart).toEqual([...apart].sort((a, b) => a - b));
      // Looking alike is mutual.
      for (const one of alike)
        expect(lookAlikes(one, TYRE_NAMES).map(({ diameterMm }) => diameterMm)).toContain(diameter);
    }
  });

  test("a size that no name leads to has none", () => {
    expect(lookAlikes(600, TYRE_NAMES)).toEqual([]);
  });
});
