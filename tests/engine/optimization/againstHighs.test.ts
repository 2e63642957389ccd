import { expect, test } from "vitest";
import { chooseInGroups } from "../../../worker/engine/optimization/chooseInGroups.ts";
import { asProgram, byHighs } from "./mixedInteger.ts";
import { type Likeness, seededChoice } from "./seededChoice.ts";

const ENOUGH = { nodeLimit: 1_000_000 };
const SECONDS = 30;
/** HiGHS lets an answer be out by this. */
const GAP = 1e-5;

const CASES: readonly (readonly [groups: number, likeness: Likeness, instances: number])[] = [
  [12, "loose", 8],
  [20, "loose", 6],
  [25, "loose", 4],
  [8, "close", 4],
];

test.each(CASES)(
  "%i finds, %s: %i drawn benches come to the total of another solver",
  (groups, likeness, instances) => {
    for (let seed = 101; seed < 101 + instances; seed++) {
      const problem = seededChoice(seed, groups, likeness);
      const other = byHighs(asProgram(problem), SECONDS);
      expect(other.proven).toBe(true);
      const ours = chooseInGroups(problem, ENOUGH)!;
      expect(ours.proven).toBe(true);
      expect(Math.abs(ours.value - other.value)).toBeLessThan(GAP);
    }
  },
  120_000,
);
