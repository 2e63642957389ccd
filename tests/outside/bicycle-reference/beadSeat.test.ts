import { describe, expect, test } from "vitest";
import { readTyreMarking } from "../../../worker/engine/inspection/tyreMarking.ts";
import { mismatch } from "../../../worker/engine/inspection/tyreMismatch.ts";
import { TYRE_NAMES } from "../../engine/inspection/smallTables.ts";

function diameters(marking: string): number[] {
  const reading = readTyreMarking(marking, TYRE_NAMES);
  if (reading.kind === "one") return [reading.diameterMm];
  return reading.kind === "several" ? reading.candidates.map((one) => one.diameterMm) : [];
}

describe("bead seat diameters (ISO 5775)", () => {
  // Source: ISO 5775 diameters in a tyre maker's table of ETRTO, inch and millimetre sizes (23-571 is 650 x 23C, 35-590 is
  // 26 x 1 3/8 and 650 x 35A, 44-507 is 24 x 1.75, 20-622 is 28 x 7/8) and a touring club's article on tyre sizes.
  test.each([
    ["700 x 32C", 622],
    ["29 x 2.0", 622],
    ["28 x 1 5/8 x 1 3/8", 622],
    ["28 x 7/8", 622],
    ["28 x 1 5/8 x 11/16", 622],
    ["27 x 1 1/4", 630],
    ["26 x 1 3/8", 590],
    ["650 x 35A", 590],
    ["650B", 584],
    ["650 x 23C", 571],
    ["26 x 1.4", 559],
    ["26 x 2.35", 559],
    ["26 x 2.8", 559],
    ["24 x 1.75", 507],
    ["20 x 1.75", 406],
    ["20 x 2.125", 406],
    ["16 x 1.75", 305],
    ["12 1/2 x 1.75 x 2 1/4", 203],
  ])("%s is %i mm, as the table says", (marking, diameter) => {
    expect(diameters(marking)).toEqual([diameter]);
  });

  // From memory, not looked up again: common tables.
  test.each([
    ["26 x 1 1/2", 584],
    ["27.5 x 2.25", 584],
    ["20 x 1 1/8", 451],
    ["20 x 1 3/8", 451],
    ["28 x 1 1/2", 635],
    ["26 x 1 1/4", 597],
  ])("%s is %i mm, from memory", (marking, diameter) => {
    expect(diameters(marking)).toEqual([diameter]);
  });

  // Source: encyclopedia article on ISO 5775 ("26 inch" is at least six rim sizes) and a touring club's article; the five
  // diameters 559, 571, 584, 590, 597 stand in a Dutch wheel-builder's article on English tyre sizes, the sixth (599) in
  // two tables of old American sizes.
  test("26 in covers 559, 571, 584, 590 and 597 mm, and one old American size", () => {
    expect(diameters("26 in")).toEqual(expect.arrayContaining([559, 571, 584, 590, 597]));
    expect(diameters("26 in").filter((one) => ![559, 571, 584, 590, 597].includes(one))).toEqual([599]);
  });

  // Source: the same articles: 26 x 1.5 (559) and 26 x 1 1/2 (584) do not interchange.
  test("26 x 1.5 and 26 x 1 1/2 share a name and not a diameter", () => {
    const [decimal] = diameters("26 x 1.5");
    const [fraction] = diameters("26 x 1 1/2");
    const found = mismatch(
      { what: "the tyre", diameterMm: decimal! },
      { what: "the rim", diameterMm: fraction! },
      TYRE_NAMES,
    );
    expect(found).toMatchObject({
      diameters: [559, 584],
      text: expect.stringContaining("Both are called 26 in"),
    });
  });

  // Source: encyclopedia article on ETRTO sizes: a 28 in tyre may be 622 or 635, a 20 in one 406 or 451.
  test("28 in covers 622 and 635, 20 in covers 406 and 451", () => {
    expect(diameters("28 in")).toEqual(expect.arrayContaining([622, 635]));
    expect(diameters("20 in")).toEqual(expect.arrayContaining([406, 451]));
  });

  // Source: tyre maker's ETRTO table against a workshop page that calls 571 mm "650A": the table is right.
  test("571 is 650C and 590 is 650A", () => {
    expect([diameters("650C"), diameters("650A")]).toEqual([[571], [590]]);
  });
});

describe("the marking's syntax (ISO 5775)", () => {
  // Source: encyclopedia article on ISO 5775: ^(\d{2,3})-(\d{3})$ is nominal section width and bead seat diameter, in mm.
  test.each([
    ["32-597", 597],
    ["32-622", 622],
    ["37-590", 590],
    ["54-559", 559],
    ["100-559", 559],
  ])("%s is read to %i mm", (marking, diameter) => {
    expect(diameters(marking)).toEqual([diameter]);
  });

  test.each(["32-62", "3-622", "32-6220", "32 622"])("%s is not of the standard's form", (marking) => {
    expect(diameters(marking)).toEqual([]);
  });

  // Source: pi (diameter + 2 width): a touring club's rule; 32-622 rolls 2155.13 mm, 37-590 2086.02 mm, 54-559 2095.44 mm.
  test.each([
    ["32-622", 32, 2155.13],
    ["37-590", 37, 2086.02],
    ["54-559", 54, 2095.44],
  ])("%s rolls the distance that its diameter implies", (marking, width, rolled) => {
    const [diameter] = diameters(marking);
    expect(Math.PI * (diameter! + 2 * width)).toBeCloseTo(rolled, 2);
  });
});
