import { describe, test } from "vitest";
import { bandKeepsItsPromise } from "../engine/bandCoverage/bandLaw.ts";

describe("a band promises what it keeps, after none to ten comparables drawn from the same market", () => {
  test("in 10,000 drawn sales", () => {
    bandKeepsItsPromise(10_000);
  });
});
