import { describe, expect, test } from "vitest";
import { chainElongation } from "../../../worker/engine/inspection/chainElongation.ts";
import { levelNeeded } from "../../../worker/engine/inspection/neededLevel.ts";
import { checkOf, inspected } from "../../engine/inspection/realTables.ts";

const INCH = 25.4;

/** The elongation that the product's own check finds. */
function elongation(length24: number): number | undefined {
  return inspected({ chain: { measured: { length24 } } }).findings[0]?.derived?.value;
}

describe("chain pitch (ISO 606, ISO 9633: half an inch, 12.7 mm)", () => {
  // Source: ISO 606 designation 081/08B, pitch 12.7 mm; 24 pitches (12 pairs of links) are 12 in, 304.8 mm.
  test("a new chain measures twelve inches over 24 pitches", () => {
    expect(24 * 12.7).toBeCloseTo(12 * INCH, 10);
    expect(elongation(304.8)).toBe(0);
  });

  // Source: arithmetic; the workshop's rule of 1/16 in over 12 in is called half a per cent.
  test.each([
    ["1/16 in over 12 in", (12 + 1 / 16) * INCH, 0.5208],
    ["1/8 in over 12 in", (12 + 1 / 8) * INCH, 1.0417],
  ])("%s is %f mm: %f %%", (_, length, percent) => {
    expect(chainElongation(length, 24, 12.7, -1)).toBeCloseTo(percent, 4);
    expect(elongation(length)).toBeCloseTo(percent, 4);
  });

  // Source: arithmetic: 304.8 mm times 1.005, 1.0075 and 1.01. Each length is the first that reaches its limit.
  test.each([
    [306.324, 0.5, "worn"],
    [307.086, 0.75, "worn-out"],
    [307.848, 1, "gone"],
  ])("%f mm over 24 pitches is %f %% and reaches %s", (length24, percent, level) => {
    expect(elongation(length24)).toBe(percent);
    expect(inspected({ chain: { measured: { length24 } } }).findings[0]?.level).toBe(level);
    expect(inspected({ chain: { measured: { length24: length24 - 0.001 } } }).findings[0]?.level).not.toBe(
      level,
    );
  });

  // Source: measured new chains lie between -0.10 % and +0.15 % (a chain-wear article): they are no fault.
  test.each([-0.1, 0, 0.15])("a new chain at %f %% is no fault", (percent) => {
    const finding = inspected({ chain: { measured: { length24: 304.8 * (1 + percent / 100) } } }).findings[0];
    expect(finding).toMatchObject({ level: "ok", rank: 0 });
  });

  // Source: workshop rule; 0.5 % for 11 speeds looked up, the other rows from memory.
  test.each([
    [12, "worn"],
    [11, "worn"],
    [10, "worn-out"],
    [9, "worn-out"],
    [undefined, "worn-out"],
    [8, "gone"],
    [5, "gone"],
    [1, "gone"],
  ])("with %s sprockets a new chain is needed from %s", (sprockets, level) => {
    expect(levelNeeded(checkOf("chain"), sprockets)).toBe(level);
  });
});
