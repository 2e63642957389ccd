import { describe, expect, test } from "vitest";
import type { Sensitivity } from "../../../dashboard/api/types.ts";
import { moveBars, movesOf, movesScale } from "../../../dashboard/unknown/moves.ts";
import { endWords, inputRange, movesTitle, shareWords } from "../../../dashboard/words/moves.ts";
import { appraisal, decided } from "../fixtures/appraisal.ts";
import { withUnknown } from "../fixtures/unknown.ts";

const end = (input: number, rate: number) => ({ input, rate, netBenefit: 0 });
const price: Sensitivity = { group: "salePrice", low: end(152, 6), high: end(261, 24), share: 0.5 };
const pace: Sensitivity = { group: "pace", low: end(0.8, 17), high: end(1.3, 11), share: 0.2 };
const faults: Sensitivity = { group: "hiddenFaults", low: end(0.1, 10), high: end(0.9, 18), share: 0.25 };

describe("the words about what moves a course", () => {
  test("name what matters most, and what comes close", () => {
    expect(movesTitle([price, faults])).toBe("The sale price matters most, hidden faults next");
    expect(movesTitle([price, pace])).toBe("The sale price matters most");
    expect(movesTitle([faults])).toBe("Hidden faults matter most");
    expect(movesTitle([])).toBe("Nothing moves it much");
  });

  test("tell inputs with their unit where they are figures", () => {
    expect(inputRange(price, "EUR")).toBe("€150 to €260 received");
    expect(inputRange(pace, "EUR")).toBe("80 to 130 % of the usual time");
    expect(inputRange(faults, "EUR")).toBe("");
    expect(endWords("salePrice", price.low, true, "EUR")).toBe("€150 received: €6 an hour");
    expect(endWords("pace", pace.high, true, "EUR")).toBe("130 % of the usual time: €11 an hour");
    expect(endWords("hiddenFaults", faults.low, true, "EUR")).toBe("going badly: €10 an hour");
    expect(endWords("hiddenFaults", faults.high, false, "EUR")).toBe("going well: €18 an hour");
  });

  test.each([
    [0.49, "about half"],
    [0.34, "about a third"],
    [0.16, "about 16 %"],
    [0.99, "nearly all"],
    [0.004, "next to nothing"],
    [0.05, "about 5 %"],
  ])("tell a share of %d as %s of the uncertainty", (share, words) => {
    expect(shareWords(share)).toBe(`${words} of the uncertainty`);
  });
});

describe("the bars of what moves a course", () => {
  const answer = withUnknown(appraisal());

  test("run from the end that earns less to the one that earns more, whichever input that is", () => {
    const moves = movesOf({ ...answer, sensitivity: [price, pace] })!;
    expect(moves.rate).toBe(14);
    expect(moveBars(moves).map(({ low, high, at }) => [low, high, at])).toEqual([
      [6, 24, 14],
      [11, 17, 14],
    ]);
  });

  test("leave out what hardly moves it, and name it apart", () => {
    const moves = movesOf(answer)!;
    expect(moves.moving.map(({ group }) => group)).toEqual([
      "salePrice",
      "hiddenFaults",
      "pace",
      "failingJobs",
    ]);
    expect(moves.still.map(({ group }) => group)).toEqual(["partPrices"]);
  });

  test("stand on one axis with nought, the goal and every end on it", () => {
    const { min, max } = movesScale(movesOf(answer)!, 12, 7);
    for (const value of [0, 12, 5, 22]) expect(value > min && value < max).toBe(true);
  });

  test("are none where the answer says nothing of it, or nothing at all", () => {
    expect(movesOf(appraisal())).toBeNull();
    expect(movesOf({ ...answer, decision: decided({ stop: "serial" }) })).toBeNull();
  });
});
