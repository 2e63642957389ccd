import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { fittedScale, historyFits, leastError } from "../../data/scripts/fitHistory.ts";
import { historyFiles } from "../../data/scripts/historyFiles.ts";
import { cells, impliedOdds, odds } from "../../data/scripts/impliedOdds.ts";
import { compileInspection } from "../../worker/engine/inspection/compileInspection.ts";
import { parseTables } from "../../worker/tables/parsedTables.ts";
import { readCatalogue, SHIPPED_TABLES } from "../../worker/tables.ts";
import { inspected } from "../engine/inspection/realTables.ts";

const { evidenceRules } = parseTables(SHIPPED_TABLES);
const tables = readCatalogue().inspection;
const fits = historyFits(tables, evidenceRules);

describe("the scale of the hidden history", () => {
  test("is the fitted one", () => {
    expect(tables.history.scale).toBe(fittedScale(fits).scale);
  });

  test("stays below what least squares alone would take, and within the caps", () => {
    const fit = fittedScale(fits);
    expect(leastError(fits).scale).toBeGreaterThan(fit.scale);
    expect(fit.left.average).toBeGreaterThanOrEqual(evidenceRules.caps.least);
    for (const { rule, least, most } of fit.rules) {
      expect(least, rule.reason).toBeGreaterThanOrEqual(evidenceRules.caps.least);
      expect(most, rule.reason).toBeLessThanOrEqual(evidenceRules.caps.most);
    }
  });

  test("moves every rule's odds to the side that the rule does, or not at all", () => {
    for (const { rule, implied, shared } of fittedScale(fits).rules) {
      const side = Math.log(implied) * Math.log(rule.odds);
      if (shared.length > 0) expect(side, JSON.stringify(rule)).toBeGreaterThan(0);
      else expect(implied).toBeCloseTo(1, 9);
    }
  });

  test("the report is what the script writes", () => {
    for (const [name, text] of historyFiles())
      expect(readFileSync(new URL(`../../data/${name}`, import.meta.url), "utf8")).toBe(text);
  });
});

describe("what the history makes of a rule", () => {
  const index = compileInspection(tables);
  const at = cells().findIndex(([key]) => key === "1980s|sheltered");

  // No modifier holds for these checks on the tourer of the tests.
  test.each([
    ["chain", "gone", "sprockets", "hooked"],
    ["fork-alignment", "offset", "front-impact", "suspect"],
    ["inner-cable", "frayed", "housing", "stiff"],
  ])("is the mixture of looking at each level: %s from %s, %s from %s", (seen, from, unseen, fault) => {
    const rule = { seen: { check: seen, atLeast: from }, unseen: { check: unseen, atLeast: fault } };
    const implied = impliedOdds({ ...rule, odds: 1, reason: "test" }, index)[at]!;

    const before = inspected({}).unseen;
    const prior = before.find(({ check }) => check === seen)!.probabilities;
    const { levels } = index.byId.get(seen)!.check;
    const { ranks } = index.byId.get(unseen)!;
    const tail = (observed: Parameters<typeof inspected>[0]) =>
      inspected(observed)
        .unseen.find(({ check }) => check === unseen)!
        .probabilities.slice(ranks.get(fault))
        .reduce((a, b) => a + b, 0);
    const first = levels.findIndex(({ id }) => id === from);
    let mixture = 0;
    let total = 0;
    for (const [rank, { id }] of levels.entries()) {
      if (rank < first) continue;
      mixture += prior[rank]! * tail({ [seen]: { level: id } });
      total += prior[rank]!;
    }
    expect(implied).toBeCloseTo(odds(mixture / total) / odds(tail({})), 9);
  });
});
