import { describe, expect, test } from "vitest";
import { PART_UNITS, partAmount, unitWords } from "../../../dashboard/words/partAmount.ts";
import parts from "../../../data/parts.json" with { type: "json" };

describe("how much of a part", () => {
  test("is counted in its unit, of one or of several", () => {
    expect(partAmount(2, "each")).toBe("2");
    expect(partAmount(1, "dose")).toBe("1 dose");
    expect(partAmount(0.5, "dose")).toBe("0.5 dose");
    expect(partAmount(2, "dose")).toBe("2 doses");
    expect(partAmount(3, "one bearing pair")).toBe("3 bearing pairs");
    expect(partAmount(1.5, "m")).toBe("1.5 m");
  });

  test("is the unit alone where it is no part: delivery, a borrowed tool", () => {
    expect(partAmount(1, "all orders")).toBe("all orders");
    expect(partAmount(1, "borrowed")).toBe("borrowed");
  });

  test("has words for every unit of the table", () => {
    const unnamed = parts.map(({ unit }) => unit).filter((unit) => !(unit in PART_UNITS));
    expect(unnamed).toEqual([]);
    expect(unitWords("each")).toBe("");
    expect(unitWords("pair")).toBe("pairs");
  });
});
