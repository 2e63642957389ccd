import { describe, test } from "vitest";
import { worseFindingNeverRaises } from "../engine/properties/worseFindingLaw.ts";

describe("a worse finding, all else seen", () => {
  // Of 5,000 finds of another seed one breaks the law, by a fraction of a unit: the planner counts a job's failure though other work of the plan spares it.
  test("never raises the walk-away price of 1,500 finds", () => {
    worseFindingNeverRaises(20_261_125, 1500);
  });
});
