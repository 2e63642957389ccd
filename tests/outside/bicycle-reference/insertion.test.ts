import { describe, expect, test } from "vitest";
import { inspected } from "../../engine/inspection/realTables.ts";

function post(inserted: number, required: number) {
  return inspected({ "seatpost-insertion": { measured: { inserted, required } } }).findings[0];
}

function stem(inserted: number, required: number) {
  return inspected({ "stem-insertion": { measured: { inserted, required } } }).findings[0];
}

describe("insertion", () => {
  // Source: 16 CFR 1512.15(b): the permanent mark of a seat post is at least two post diameters from the lowest point of its shaft.
  test.each([25.4, 27.2, 31.6])(
    "a %f mm post with less than two diameters in the frame blocks riding",
    (diameter) => {
      const required = 2 * diameter;
      expect(post(required - 0.1, required)).toMatchObject({ level: "short", safety: "block" });
      expect(post(required, required)).toMatchObject({ level: "ok", safety: "none" });
    },
  );

  // Source: 16 CFR 1512.6(a) asks for a mark two and a half stem diameters up; the clause is from memory. A 22.2 mm quill: 55.5 mm.
  test("a quill of 22.2 mm with less than two and a half diameters in the steerer blocks riding", () => {
    const required = 2.5 * 22.2;
    expect(required).toBeCloseTo(55.5, 10);
    expect(stem(55, required)).toMatchObject({ level: "short", safety: "block" });
    expect(stem(56, required)).toMatchObject({ level: "ok", safety: "none" });
  });

  test("a millimetre either way of the mark is to be measured again", () => {
    for (const inserted of [53.5, 54.4, 55.3])
      expect(post(inserted, 54.4)?.borderline).toEqual(["ok", "short"]);
    expect(post(60, 54.4)?.borderline).toBeUndefined();
  });
});
