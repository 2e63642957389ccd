import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compileInspection } from "../../../worker/engine/inspection/compileInspection.ts";
import { inspect } from "../../../worker/engine/inspection/inspect.ts";
import { modified } from "../../../worker/engine/inspection/modified.ts";
import type { Observations } from "../../../worker/engine/inspection/observation.ts";
import { SMALL_TABLES, STEEL_TOURER } from "./smallTables.ts";

const INDEX = compileInspection(SMALL_TABLES);

function unseen(observations: Observations, attributes = STEEL_TOURER) {
  return new Map(inspect(attributes, {}, observations, INDEX).unseen.map((one) => [one.check, one]));
}

function sum(list: readonly number[]): number {
  return list.reduce((a, b) => a + b, 0);
}

const priors = fc
  .array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 2, maxLength: 6 })
  .map((weights) => weights.map((weight) => weight / sum(weights)));
const odds = fc.double({ min: 0.05, max: 20, noNaN: true });

describe("a modifier", () => {
  test("multiplies the odds of its set exactly and keeps the proportions inside and outside", () => {
    fc.assert(
      fc.property(priors, odds, fc.nat(), (prior, factor, n) => {
        const fromRank = 1 + (n % (prior.length - 1));
        const after = modified(prior, [{ fromRank, odds: factor }]);
        expect(sum(after)).toBeCloseTo(1, 12);
        const oddsOf = (chances: readonly number[]) =>
          sum(chances.slice(fromRank)) / sum(chances.slice(0, fromRank));
        expect(oddsOf(after) / oddsOf(prior) / factor).toBeCloseTo(1, 10);
        for (const part of [
          after.map((_, i) => i).slice(0, fromRank),
          after.map((_, i) => i).slice(fromRank),
        ]) {
          for (const i of part)
            expect((after[i]! * prior[part[0]!]!) / (after[part[0]!]! * prior[i]!)).toBeCloseTo(1, 10);
        }
      }),
    );
  });

  test("works the same in any order", () => {
    fc.assert(
      fc.property(priors, odds, odds, (prior, one, two) => {
        const a = { fromRank: 1, odds: one };
        const b = { fromRank: prior.length - 1, odds: two };
        const [ab, ba] = [modified(prior, [a, b]), modified(modified(prior, [b]), [a])];
        for (const i of ab.keys()) expect(ab[i]!).toBeCloseTo(ba[i]!, 12);
      }),
    );
  });

  test("of one changes nothing", () => {
    expect(modified([0.5, 0.25, 0.25], [{ fromRank: 1, odds: 1 }])).toEqual([0.5, 0.25, 0.25]);
  });
});

describe("what was not looked at", () => {
  test("keeps the prior for era and keeping, with the bike's modifiers", () => {
    expect(unseen({}).get("fork")?.probabilities).toEqual([0.7, 0.2, 0.1]);
    const bmx = { ...STEEL_TOURER, frameMaterial: "aluminium", category: "bmx" } as const;
    const after = unseen({}, bmx).get("fork")!.probabilities;
    const total = 0.7 + 0.2 * 1.5 + 0.1 * 1.5 * 4;
    expect(after[0]).toBeCloseTo(0.7 / total, 12);
    expect(after[1]).toBeCloseTo(0.3 / total, 12);
    expect(after[2]).toBeCloseTo(0.6 / total, 12);
  });

  test("is cleared by a finding on the whole bike at the level that acquits, and by no other", () => {
    expect(unseen({ brake: { level: "good" } }).get("pads")).toEqual({
      check: "pads",
      probabilities: [1, 0, 0],
      prior: [0.7, 0.2, 0.1],
      byClass: Float64Array.from({ length: 48 }, (_, at) => (at % 3 === 0 ? 1 : 0)),
      acquittedBy: "brake",
    });
    expect(unseen({ brake: { level: "poor" } }).get("pads")?.acquittedBy).toBeNull();
    const wheels = (front: string, rear: string) =>
      unseen({ spokes: { front: { level: front }, rear: { level: rear } } });
    expect(wheels("good", "good").get("string")?.acquittedBy).toBe("spokes");
    expect(wheels("good", "bad").get("string")?.acquittedBy).toBeNull();
    expect(unseen({ spokes: { front: { level: "good" } } }).get("string")?.acquittedBy).toBeNull();
  });

  test("may be cleared by the description alone", () => {
    expect(unseen({}).get("spacing")?.probabilities).toEqual([0.7, 0.2, 0.1]);
    const complete = { ...STEEL_TOURER, completeness: "complete" } as const;
    expect(unseen({}, complete).get("spacing")).toMatchObject({
      probabilities: [1, 0, 0],
      acquittedBy: null,
    });
  });

  test("a serial number that nobody looked at is neither cleared nor condemned", () => {
    expect(unseen({}).get("serial")?.probabilities).toEqual([0.98, 0.02]);
  });

  test("what was looked at is not listed", () => {
    expect(unseen({ fork: { level: "bad" } }).has("fork")).toBe(false);
  });
});
