import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  amount,
  bareLength,
  length,
  readLength,
  stepOf,
  withLengths,
} from "../../../dashboard/words/length.ts";
import {
  bandWords,
  chainLimit,
  chainTitle,
  dropoutTitle,
  onTheLine,
  stringNote,
  stringTitle,
} from "../../../dashboard/words/measured.ts";
import { readNumber } from "../../../dashboard/words/readNumber.ts";
import { beadSeatWords, tyreWidth } from "../../../dashboard/words/tyre.ts";

const read = (text: string, unit: "mm" | "in") => readLength(text, unit, readNumber);

describe("lengths", () => {
  test("are shown in the user's unit", () => {
    expect(length(43.5, "mm")).toBe("43.5 mm");
    expect(length(38.1, "in")).toBe("1.5 in");
    expect(bareLength(-2, "mm")).toBe("\u22122");
    expect(amount(0.524, "%", "in")).toBe("0.52 %");
    expect(amount(3, "count", "in")).toBe("3");
  });

  // An inch is 25.4 mm exactly.
  test.each([
    ["43,5", "mm", 43.5],
    ["1.5", "in", 38.1],
    ["12 1/16", "in", 306.3875],
    ["12-1/16\u2033", "in", 306.3875],
    ["3/8", "in", 9.525],
    ['2"', "in", 50.8],
    ["", "in", undefined],
    ["abc", "in", null],
    ["3/0", "in", null],
    ["3/8", "mm", null],
  ] as const)("%j in %s is read as %j mm", (text, unit, mm) => {
    expect(read(text, unit)).toBe(mm);
  });

  test("what is shown reads back to what it shows", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 999, noNaN: true }),
        fc.constantFrom("mm", "in" as const),
        (mm, unit) => {
          const shown = bareLength(mm, unit);
          expect(bareLength(read(shown, unit) ?? Number.NaN, unit)).toBe(shown);
        },
      ),
    );
  });

  test("a step is half a millimetre, or the nearest five hundredth of an inch", () => {
    expect(stepOf(0.5, "mm")).toBe(0.5);
    expect(stepOf(0.5, "in")).toBeCloseTo(0.508, 9);
    expect(stepOf(0.01, "in")).toBeGreaterThan(0);
  });

  test("of a sentence are turned into the user's unit", () => {
    expect(withLengths("at least 301.8 mm, since", "in")).toBe("at least 11.882 in, since");
    expect(withLengths("a value from 0 to 150 mm", "in", true)).toBe("a value from 0 to 5.906 in");
    // A bound is to be kept to the digit; prose is as fine as the millimetres it was written in.
    expect(withLengths("at least 301 mm", "in", true)).toBe("at least 11.85 in");
    expect(withLengths("Pull 20 to 60 mm of slack", "in")).toBe("Pull 0.79 to 2.36 in of slack");
    expect(withLengths("deeper than 2 mm", "in")).toBe("deeper than 0.08 in");
    expect(withLengths("walls of 1.2 mm", "in")).toBe("walls of 0.047 in");
    expect(withLengths("at least 301.8 mm", "mm")).toBe("at least 301.8 mm");
    expect(withLengths("0.5 % or 3 mmHg", "in")).toBe("0.5 % or 3 mmHg");
  });
});

describe("what was measured, in words", () => {
  test("the string test says by how much, to which side, and how it is drawn", () => {
    expect(stringTitle({ offset: 4.31 }, "mm")).toBe("The rear end sits 4.3 mm to the right at the axle");
    expect(stringTitle({ offset: -2.54 }, "in")).toBe("The rear end sits 0.1 in to the left at the axle");
    expect(stringTitle({ offset: 0.01 }, "mm")).toBe("The rear end is in line at the axle");
    expect(stringNote({ offset: 4.31, times: 18 })).toBe(
      "Bend drawn 18 times too large. Dashed: straight. Right is the drive side.",
    );
    expect(stringNote({ offset: 60, times: 1 })).toContain("Bend drawn to scale.");
  });

  test("the chain says its elongation and the limit for the sprockets", () => {
    expect(chainTitle(306.4, 24, 0.525, "mm")).toBe("306.4 mm over 24 pitches: 0.53 % longer than new");
    expect(chainTitle(304.8, 24, 0, "in")).toBe("12 in over 24 pitches: as long as new");
    expect(chainLimit(0.75, 307.086, 9, "mm")).toBe(
      "A new chain is needed from 0.75 % (307.1 mm) with 9 sprockets at the back.",
    );
    expect(chainLimit(1, 307.848, 1, "mm")).toMatch(/with 1 sprocket at the back\.$/);
    expect(chainLimit(0.75, 307.086, undefined, "mm")).toMatch(/nobody counted/);
  });

  test("hub and dropouts, bands, and the line between two levels", () => {
    expect(dropoutTitle({ difference: 4 }, "mm")).toBe("The hub is 4 mm wider than the dropouts");
    expect(dropoutTitle({ difference: -25.4 }, "in")).toBe("The hub is 1 in narrower than the dropouts");
    expect(bandWords(0, 2, "mm", "mm")).toBe("below 2\u00a0mm");
    expect(bandWords(0, null, "mm", "mm")).toBe("from 0\u00a0mm");
    expect(bandWords(4, 8, "mm", "mm")).toBe("4 to 8\u00a0mm");
    expect(bandWords(1, null, "%", "mm")).toBe("from 1\u00a0%");
    expect(bandWords(3, 6, "count", "in")).toBe("3 to 6");
    expect(onTheLine({ better: "slight", worse: "out", at: 4 }, 4.2, 1, "mm", "mm")).toBe(
      "Between slight and out the line is at 4 mm; your reading comes to 4.2 mm, and one reading error is 1 mm.",
    );
  });
});

describe("a tyre's marking, in words", () => {
  test("width with its unit, inches with millimetres; bead seats in question", () => {
    expect(tyreWidth({ value: 28, unit: "mm" })).toBe("28 mm");
    expect(tyreWidth({ value: 1.75, unit: "in" })).toBe("1.75 in (44 mm)");
    const seats = (...diameters: number[]) => diameters.map((diameterMm) => ({ diameterMm, reason: "" }));
    expect(beadSeatWords({ reading: "one", candidates: seats(622) })).toBe("622 mm");
    expect(beadSeatWords({ reading: "several", candidates: seats(599, 571, 559) })).toBe(
      "599, 571 or 559 mm",
    );
    expect(beadSeatWords({ reading: "tubular", candidates: [] })).toBe("none: glued on");
    expect(beadSeatWords({ reading: "unlisted", candidates: [] })).toBe("not known");
  });
});
