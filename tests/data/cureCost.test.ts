import { describe, expect, test } from "vitest";
import type { Attributes } from "../../worker/engine/bicycle.ts";
import { bikesToldApart } from "../../worker/tables/bikesToldApart.ts";
import { cheapestCure, priceList } from "../../worker/tables/cureCost.ts";
import { parseTables } from "../../worker/tables/parsedTables.ts";
import { SHIPPED_TABLES } from "../../worker/tables.ts";

const LIST = { ...priceList(parseTables(SHIPPED_TABLES)), hourlyGoal: 12 };
const BIKE: Attributes = {
  ...bikesToldApart([])[0]!,
  componentTier: "upper",
  frameMaterial: "steel",
  kept: "indoors",
  barType: "drop",
  drivetrain: "derailleur",
};

function cost(options: readonly (readonly string[])[], check = "chain", level = "worn", bike = BIKE): number {
  return cheapestCure(options, { bike, check, level }, LIST);
}

/** Worked by hand from the tables at 12 an hour, so a minute costs 0.20. */
describe("the cheapest cure by typical figures", () => {
  test("is minutes at the goal where nothing is bought: 6 minutes for a headset", () => {
    expect(cost([["adjust-headset"]])).toBeCloseTo(1.2, 9);
  });

  test("is part, dose, minutes, step and the work it entails: a chain one tier below, 5 and 5 minutes, gears set in 15", () => {
    // Chain 18, oil 0.5; on in 5, the old one off in 5, and a new chain wants the gears indexed.
    expect(cost([["new-chain"]])).toBeCloseTo(18 + 0.5 + (5 + 5 + 15) * 0.2, 9);
  });

  test("is both wheels where the work is told for one: two used wheels, 52 minutes, steps of both", () => {
    // Used front 48 and rear 57; twice 12 minutes; tyres 16, wheels 5, sprockets 7.
    expect(cost([["replace-wheel"]])).toBeCloseTo(48 + 57 + 52 * 0.2, 9);
  });

  test("is the smaller job where the level asks for it: loose hubs are adjusted in 10 minutes with both wheels out", () => {
    expect(cost([["service-hub"]], "hub-bearings", "loose")).toBeCloseTo(15 * 0.2, 9);
    expect(cost([["service-hub"]], "hub-bearings", "rough")).toBeCloseTo(2 * 0.6 + 2 * 3 + 53 * 0.2, 9);
  });

  test("carries the chance of failure times its cheapest consequence", () => {
    // Flushing: degreaser 2, oil 0.5, 25 minutes, gear cables out 10, gears set 15; three in ten need used levers at 22 and 30 minutes, gear
    // cables out again, tape off 4, tape (mid, 14) in 16 minutes, and the gears set again.
    const flush = 2 + 0.5 + (25 + 10 + 15) * 0.2;
    const levers = 22 + 14 + (30 + 10 + 4 + 16 + 15) * 0.2;
    expect(cost([["revive-shifters"]])).toBeCloseTo(flush + 0.3 * levers, 9);
  });

  test("is the least over what the bike allows, and infinite where it allows nothing", () => {
    const carbon = { ...BIKE, frameMaterial: "carbon" } as const;
    expect(cost([["cold-set"], ["adjust-headset"]], "x", "y", carbon)).toBeCloseTo(1.2, 9);
    expect(cost([["cold-set"]], "x", "y", carbon)).toBe(Number.POSITIVE_INFINITY);
  });
});
