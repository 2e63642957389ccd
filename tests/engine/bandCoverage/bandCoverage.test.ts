import { describe, test } from "vitest";
import { bandKeepsItsPromise } from "./bandLaw.ts";

describe("a band promises what it keeps, after none to ten comparables drawn from the same market", () => {
  test("in 4,000 drawn sales", () => {
    bandKeepsItsPromise(4000);
  });
});
