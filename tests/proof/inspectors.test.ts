import { afterAll, describe, expect, test } from "vitest";
import { drawBike } from "../engine/inspectors/drawnBike.ts";
import { inspectAll } from "../engine/inspectors/inspectors.ts";
import { Chance } from "../engine/walker/chance.ts";

const BIKES = 2000;

/**
 * Two thousand bikes drawn from the linked chances, nothing looked at, each looked over by three inspectors who decide alike: all checks in the order of the
 * catalogue; the quickest for as many minutes as the advice takes; what the engine names first, what is owed once it says enough, and on while it names any. Some ten minutes.
 */
describe("three inspectors on two thousand bikes", () => {
  const chance = new Chance(20_261_127);
  const told = inspectAll(Array.from({ length: BIKES }, () => drawBike(chance)));
  const { fullKnowledge, byCatalogue, byAdvice } = told;

  afterAll(() => {
    console.info(`Knowing everything: ${fullKnowledge.toFixed(2)} a bike`);
    for (const name of ["nothing", "byCatalogue", "cheapestFirst", "byAdvice"] as const) {
      const { minutes, worth } = told[name];
      const lost = (100 * (fullKnowledge - worth)) / fullKnowledge;
      console.info(`${name}: ${minutes.toFixed(1)} minutes, ${lost.toFixed(2)} % lost`);
    }
  });

  test("the advice comes within 3 % of what every check brings", () => {
    expect(byAdvice.worth).toBeGreaterThanOrEqual(0.97 * byCatalogue.worth);
  });

  test("in at most half the minutes, and in a quarter as is aimed at", () => {
    expect(byAdvice.minutes).toBeLessThanOrEqual(byCatalogue.minutes / 2);
    expect(byAdvice.minutes).toBeLessThanOrEqual(byCatalogue.minutes / 4);
  });
});
