import { describe, expect, test } from "vitest";
import { Chance } from "../walker/chance.ts";
import { drawBike } from "./drawnBike.ts";
import { inspectAll } from "./inspectors.ts";

/** Few bikes, so that the floors leave room for chance; `npm run proof` draws 2,000. */
const BIKES = 40;

describe("three inspectors who decide alike, on bikes drawn from the linked chances", () => {
  const chance = new Chance(20_261_126);
  const { fullKnowledge, byCatalogue, byAdvice, cheapestFirst } = inspectAll(
    Array.from({ length: BIKES }, () => drawBike(chance)),
  );

  test("the advice takes at most half the minutes of every check, and loses little of what they bring", () => {
    expect(byAdvice.minutes).toBeLessThan(byCatalogue.minutes / 2);
    expect(byAdvice.worth).toBeGreaterThan(0.93 * byCatalogue.worth);
  });

  test("nobody does better than by knowing everything, and as many minutes of the quickest checks bring less than the advice", () => {
    for (const { worth } of [byCatalogue, byAdvice, cheapestFirst])
      expect(worth).toBeLessThanOrEqual(fullKnowledge + 1e-9);
    expect(cheapestFirst.worth).toBeLessThan(byAdvice.worth);
  });
});
