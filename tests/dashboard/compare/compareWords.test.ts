import { describe, expect, test } from "vitest";
import { owedSaid, priceSaid, riskSaid, unknownSaid } from "../../../dashboard/words/compareWords.ts";
import { decided } from "../fixtures/appraisal.ts";
import { check } from "../fixtures/check.ts";

const known = { checks: [check({ id: "headset", name: "Headset play", minutes: 2 })] };
const nameOf = (id: string) => ({ headset: "Headset play", "dye-test": "Dye test of the frame" })[id] ?? id;

describe("the price of a find", () => {
  test.each([
    [35, false, 105.2, { strong: "Pay at most €105", rest: "they ask €35" }],
    [0, false, 30, { strong: "Pay at most €30", rest: "given away" }],
    [undefined, false, 30, { strong: "Pay at most €30", rest: "no price known" }],
    [15, false, 0, { strong: "Not even for nothing", rest: "they ask €15" }],
    [20, true, null, { strong: "Already paid", rest: "paid €20" }],
    [0, true, null, { strong: "Already paid", rest: "was given" }],
  ] as const)("of %s, paid %s, worth at most %s", (price, paid, most, said) => {
    expect(priceSaid(price, paid, most, "EUR")).toEqual(said);
  });
});

test("risk is the low end of the margin", () => {
  expect(riskSaid(-201, "EUR")).toEqual({ strong: "−€200", rest: "or worse in 1 of 10" });
  expect(riskSaid(50, "EUR")).toEqual({ strong: "€50", rest: "or less in 1 of 10" });
});

describe("what is owed before riding or selling", () => {
  test("is counted, and the first three named, faults before looks", () => {
    expect(
      owedSaid(
        { ready: false, blocking: ["A"], owed: ["B", "C", "D", "E"] },
        (id) => `Part ${id}`,
        () => false,
      ),
    ).toEqual({
      strong: "One fault to cure, four looks owed",
      rest: "part A, part B, part C and 2 more",
    });
  });

  test("may be nothing", () => {
    expect(owedSaid({ ready: true, blocking: [], owed: [] }, nameOf, () => false)).toEqual({
      strong: "Nothing blocks, no look owed",
      rest: "",
    });
  });
});

describe("the biggest unknown", () => {
  const hidden = [{ check: "headset", level: "rough", probability: 0.31, prior: 0.3, raisedBy: [] }];

  test("is the likeliest fault nobody looked for, with the minutes of its check", () => {
    expect(unknownSaid({ decision: decided({}), hidden }, known, nameOf)).toEqual({
      strong: "Headset play",
      rest: "rough in 3 of 10; 2 min to check",
    });
  });

  test("is first of all the test that is worth more than deciding now, without minutes nobody gave", () => {
    expect(unknownSaid({ decision: decided({ lookFirst: "dye-test" }), hidden }, known, nameOf)).toEqual({
      strong: "Dye test of the frame",
      rest: "before anything else",
    });
    expect(unknownSaid({ decision: decided({ lookFirst: "headset" }), hidden }, known, nameOf).rest).toBe(
      "before anything else; 2 min to check",
    );
  });

  test("may be none", () => {
    expect(unknownSaid({ decision: decided({}), hidden: [] }, known, nameOf)).toEqual({
      strong: "No likely fault left unseen",
      rest: "",
    });
  });
});
