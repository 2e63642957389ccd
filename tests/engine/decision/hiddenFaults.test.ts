import { describe, expect, test } from "vitest";
import { inspectFind } from "../../../worker/engine/decision/inspectFind.ts";
import type { Observations } from "../../../worker/engine/inspection/observation.ts";
import { BOOK } from "./shippedBook.ts";

const STEEL_TOURER = {
  category: "touring",
  era: "1980s",
  frameMaterial: "steel",
  componentTier: "mid",
  kept: "sheltered",
} as const;

function answer(observations: Observations) {
  return inspectFind(
    { find: { attributes: STEEL_TOURER, dimensions: {} }, observations, workshop: { hourlyGoal: 8 } },
    BOOK,
  );
}

/** Odds that the check stands at the level or worse, from the inspection anew. */
function oddsOf(check: string, level: string, observations: Observations): number {
  const { levels } = BOOK.checks.get(check)!;
  const from = levels.findIndex(({ id }) => id === level);
  const { hidden } = answer(observations);
  const one = hidden.find((row) => row.check === check);
  expect(one?.level, `${check} listed at its worst level`).toBe(levels.at(-1)!.id);
  expect(from).toBe(levels.length - 1);
  return one!.probability / (1 - one!.probability);
}

const SEEN: Observations = {
  rust: { level: "pitted" },
  "alloy-corrosion": { level: "pitted" },
  "front-impact": { level: "none" },
  "tyre-condition": { level: "perished" },
  "inner-cable": { level: "frayed" },
  finish: { level: "faded" },
};

describe("the faults that nobody looked for", () => {
  test("come with their chance before and after, likeliest first, papers left out", () => {
    const before = answer({}).hidden;
    const { hidden } = answer(SEEN);
    for (const { check, level, prior, probability } of hidden) {
      const same = before.find((one) => one.check === check && one.level === level);
      if (same) expect(prior).toBeCloseTo(same.probability, 9);
      expect(probability).toBeLessThanOrEqual(1);
    }
    const chances = hidden.map(({ probability }) => probability);
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(hidden.map(({ check }) => check)).not.toContain("serial");
    expect(before.every(({ raisedBy }) => raisedBy.length === 0)).toBe(true);
  });

  test("name what raises them: the odds with all findings over those without that one", () => {
    // Its worst level, so that the level or worse is the level.
    const stuck = answer(SEEN).hidden.filter(
      ({ check, level, raisedBy }) =>
        BOOK.checks.get(check)!.levels.at(-1)!.id === level && raisedBy.length > 0,
    );
    expect(stuck.length).toBeGreaterThan(0);
    let compared = 0;
    for (const { check, level, raisedBy } of stuck) {
      for (const { check: by, oddsFactor } of raisedBy) {
        const { [by]: left, ...others } = SEEN;
        expect(left).toBeDefined();
        if (answer(others).hidden.find((one) => one.check === check)?.level !== level) continue;
        expect(oddsFactor).toBeCloseTo(oddsOf(check, level, SEEN) / oddsOf(check, level, others), 9);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(0);
  });

  test("name at most three findings, the strongest first, none that hardly counts", () => {
    const { hidden } = answer(SEEN);
    for (const { raisedBy } of hidden) {
      expect(raisedBy.length).toBeLessThanOrEqual(3);
      const factors = raisedBy.map(({ oddsFactor }) => oddsFactor);
      expect(factors).toEqual([...factors].sort((a, b) => b - a));
      for (const factor of factors) expect(factor).toBeGreaterThanOrEqual(1.15);
      expect(raisedBy.map(({ check }) => check)).not.toContain("front-impact");
    }
    const post = hidden.find(({ check }) => check === "seatpost-free")!;
    expect(post.raisedBy.map(({ check }) => check)).toContain("rust");
    expect(post.probability).toBeGreaterThan(post.prior);
  });

  test("come with what the past seems to be", () => {
    const before = answer({}).history;
    const { history } = answer(SEEN);
    expect(history.weather).toBeGreaterThan(before.weather);
    expect(history.crash).toBeLessThan(before.crash);
    expect(Object.keys(history)).toEqual(["weather", "mileage", "neglect", "crash"]);
  });
});
