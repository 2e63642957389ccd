import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTyreMarking } from "../../../worker/engine/inspection/tyreMarking.ts";
import { mismatch } from "../../../worker/engine/inspection/tyreMismatch.ts";
import { TYRE_NAMES } from "./smallTables.ts";

function read(marking: string) {
  return readTyreMarking(marking, TYRE_NAMES);
}

/** The diameters a marking may mean, smallest last; empty where it says none. */
function diameters(marking: string): number[] {
  const reading = read(marking);
  if (reading.kind === "one") return [reading.diameterMm];
  return reading.kind === "several" ? reading.candidates.map((one) => one.diameterMm) : [];
}

describe("a tyre's marking", () => {
  test("the numbers of the standard are read back for every width and diameter", () => {
    const widths = fc.integer({ min: 18, max: 99 });
    const sizes = fc.integer({ min: 137, max: 787 });
    fc.assert(
      fc.property(widths, sizes, (width, size) => {
        expect(diameters(`${width}-${size}`)).toEqual([size]);
      }),
    );
  });

  test.each([
    ["700x32C", 622],
    ["700 x 28c", 622],
    ["700C x 25", 622],
    ["700-23C", 622],
    ["700 × 38", 622],
    ["650B", 584],
    ["650b x 2.25", 584],
    ["650 x 35A", 590],
    ["27 x 1 1/4", 630],
    ["27×1¼", 630],
    ["27x1-1/4", 630],
    ['27" x 1 1/8"', 630],
    ["27.5 x 2.1", 584],
    ["29er", 622],
    ["26 x 1.75", 559],
    ["26 x 1,75", 559],
    ["26 in x 1.75", 559],
    ["26 x 1.5", 559],
    ["26 x 1 1/2", 584],
    ["26 x 1 3/8", 590],
    ["26 x 1 3/8 E.A.3", 590],
    ["26 x 1 3/8 (S-6)", 597],
    ["26 x 1 1/4", 597],
    ["26 x 2.0", 559],
    ["28 x 1 1/2", 635],
    ["28 x 1 5/8 x 1 3/8", 622],
    ["28 x 1 3/8 x 1 5/8", 622],
    ["28 x 1.75", 622],
    ["24 x 1.75", 507],
    ["24 x 1 3/8 S-5", 547],
    ["20 x 1 3/8", 451],
    ["20 x 1.75", 406],
    ["12 1/2 x 2 1/4", 203],
    ["12 1/2 x 1.75 x 2 1/4", 203],
    ["622x19C", 622],
    ["622 x 13", 622],
    ["559 x 24 TC", 559],
    ["20-622", 622],
    ["28-622 (700x28C)", 622],
    ["26 x 1 3/8 (37-590)", 590],
    ["47-559 reflex", 559],
  ])("%s sits on %i mm", (marking, diameter) => {
    expect(diameters(marking)).toEqual([diameter]);
  });

  test.each([
    ["26 in", [599, 597, 590, 584, 571, 559]],
    ["28", [642, 635, 622]],
    ["20 inch", [451, 419, 406]],
    ["26 x 1", [571, 559]],
    ["26 x 1.25", [599, 559]],
    ["24 x 1 1/8", [540, 520]],
    ["16 x 1 3/8", [349, 340, 337, 335]],
    ["650 x 35", [590, 584]],
    ["700", [642, 635, 622, 587]],
  ])("%s is not guessed: it may be %j, each with its reason", (marking, expected) => {
    const reading = read(marking);
    expect(diameters(marking)).toEqual(expected);
    if (reading.kind !== "several") throw new Error("one answer where several are in question");
    for (const { reason } of reading.candidates) expect(reason.length).toBeGreaterThan(3);
    expect(reading.remedy).toMatch(/covers bead seats of .* mm: read the two numbers/);
  });

  test("a decimal and a fraction of equal value never read to the same single diameter", () => {
    const nominals = fc.constantFrom(16, 20, 24, 26);
    const eighths = fc.integer({ min: 9, max: 15 }).filter((n) => n % 8 !== 0);
    fc.assert(
      fc.property(nominals, eighths, (nominal, n) => {
        const bottom = n % 4 === 0 ? 2 : n % 2 === 0 ? 4 : 8;
        const fraction = `${nominal} x 1 ${((n - 8) * bottom) / 8}/${bottom}`;
        const shared = diameters(fraction).filter((one) => diameters(`${nominal} x ${n / 8}`).includes(one));
        expect(shared).toEqual([]);
      }),
    );
  });

  test("a tubular has no bead", () => {
    expect(read("700C tubular").kind).toBe("tubular");
    expect(read("700 x 32C tubeless").kind).not.toBe("tubular");
  });

  test("a usual form that no table holds is said to be unlisted, not guessed", () => {
    for (const marking of ["26 x 1 5/8", "23 x 1.75", "28 x 15/8", "26 x 1.75 Q9"]) {
      expect(read(marking)).toMatchObject({ kind: "unlisted", remedy: expect.stringContaining("32-622") });
    }
  });

  test("what is no marking is refused with the remedy", () => {
    for (const marking of ["", "round", "32-999", "x 1.75", "-622"]) {
      expect(read(marking)).toMatchObject({
        kind: "unreadable",
        remedy: expect.stringContaining("ISO 5775"),
      });
    }
  });

  test("numbers and name that contradict each other are refused", () => {
    expect(read("32-630 (700 x 32C)")).toMatchObject({
      kind: "unreadable",
      reason: expect.stringContaining("630"),
    });
  });

  test("any text at all gets an answer", () => {
    const kinds = ["one", "several", "tubular", "unlisted", "unreadable"];
    const texts = fc.oneof(fc.string(), fc.stringMatching(/^[0-9x/. "A-D-]{0,16}$/));
    fc.assert(
      fc.property(texts, (text) => {
        expect(kinds).toContain(read(text).kind);
      }),
    );
  });
});

describe("two sizes", () => {
  test("the same diameter is no mismatch, whatever it is called", () => {
    fc.assert(
      fc.property(fc.integer({ min: 137, max: 787 }), (size) => {
        expect(
          mismatch({ what: "a", diameterMm: size }, { what: "b", diameterMm: size }, TYRE_NAMES),
        ).toBeNull();
      }),
    );
  });

  test("a mismatch names both diameters and the name they share", () => {
    const found = mismatch(
      { what: "the rim", diameterMm: 559 },
      { what: "the tyre", diameterMm: 590 },
      TYRE_NAMES,
    );
    expect(found?.diameters).toEqual([559, 590]);
    expect(found?.text).toBe(
      "The rim says 559 mm, the tyre says 590 mm: they do not fit each other. Both are called 26 in.",
    );
  });
});
