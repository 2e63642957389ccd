import { describe, expect, test } from "vitest";
import { partAmount, unitWords } from "../../../dashboard/words/partAmount.ts";
import parts from "../../../data/parts.json" with { type: "json" };

describe("how much of a part", () => {
  test("is counted in its unit, of one or of several", () => {
    expect(partAmount(2, "each")).toBe("2");
    expect(partAmount(1, "dose")).toBe("1 dose");
    expect(partAmount(0.5, "dose")).toBe("0.5 dose");
    expect(partAmount(2, "dose")).toBe("2 doses");
    expect(partAmount(1.5, "m")).toBe("1.5 m");
  });

  test("is what is said of it where it is no part: delivery, a borrowed tool", () => {
    expect(partAmount(1, "all orders")).toBe("all orders");
    expect(partAmount(1, "borrowed")).toBe("borrowed");
  });

  test("reads as English in every unit of the table", () => {
    const units = [...new Set(parts.map(({ unit }) => unit))].sort();
    expect(units.map((unit) => `${partAmount(1, unit)}, ${partAmount(2, unit)}`)).toEqual([
      "1 bike, 2 bikes",
      "1 dose, 2 doses",
      "1, 2",
      "1 frame, 2 frames",
      "1 job, 2 jobs",
      "1 m, 2 m",
      "1 bearing pair, 2 bearing pairs",
      "1 fork, 2 forks",
      "1 hub, 2 hubs",
      "1 job, 2 jobs",
      "1 wheel, 2 wheels",
      "1 pair, 2 pairs",
      "1 pair for a wheel, 2 pairs for a wheel",
      "1 repair, 2 repairs",
      "1 set, 2 sets",
      "1 set for a bike, 2 sets for a bike",
    ]);
    expect(unitWords("each")).toBe("");
    expect(unitWords("pair")).toBe("pairs");
  });
});
