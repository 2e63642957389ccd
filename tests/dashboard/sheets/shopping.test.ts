import { describe, expect, test } from "vitest";
import type { AppraisalBody } from "../../../dashboard/api/types.ts";
import { sizesToMeasure } from "../../../dashboard/sheets/shopping.ts";
import { referenceOf } from "../fixtures/service.ts";

const known = await referenceOf();
const body = {
  find: { category: "hybrid", rearSprockets: 8, tyreMarking: "37-622" },
  observations: {
    "dropout-spacing": { measured: { spacing: 130.5, hub: 135 } },
    "brake-pads": { front: { measured: { thickness: 1.2 } }, rear: { level: "ok" } },
  },
} as unknown as AppraisalBody;
const sizes = (...ids: string[]) =>
  sizesToMeasure(
    ids.map((id) => ({ part: id, name: known.parts.find((part) => part.id === id)!.name })),
    known,
    body,
    "mm",
  );

describe("the sizes to measure before ordering", () => {
  test("stand once each, with all the parts they are for", () => {
    const sprockets = sizes("chain", "cassette").filter(
      ({ what }) => what === "Number of sprockets at the back",
    );
    expect(sprockets).toMatchObject([{ parts: ["chain", "cassette"], known: "8 sprockets" }]);
  });

  test("name the check that shows them, and come in its order", () => {
    const checks = sizes("chain", "seatpost", "tyre").flatMap(({ check }) => check ?? []);
    const order = checks.map((name) => known.checks.findIndex((one) => one.name === name));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(checks).toContain("Seatpost size and insertion");
  });

  test("say what is known already: the marking, and what was measured", () => {
    const of = (id: string, what: RegExp) => sizes(id).find((one) => what.test(one.what))?.known;
    expect(of("tyre", /^Bead seat/)).toBe("marked 37-622");
    expect(of("wheel-rear", /^Between the dropouts/)).toMatch(/130\.5 mm.*135 mm/);
    expect(of("rim-pads", /^Fixing/)).toMatch(/^front: .*1\.2 mm$/);
    expect(of("seatpost", /^Outer diameter/)).toBeNull();
  });

  test("are nothing for what fits any bike", () => {
    expect(sizes("chain-oil", "bar-tape")).toEqual([]);
  });

  test("name a part of the catalogue or are silent", () => {
    expect(sizesToMeasure([{ part: "delivery", name: "Delivery" }], known, body, "mm")).toEqual([]);
  });
});
