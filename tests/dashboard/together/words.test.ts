import { describe, expect, test } from "vitest";
import type { ComparisonAnswer } from "../../../dashboard/api/types.ts";
import { needsWords, type SetTold, setHeadline } from "../../../dashboard/words/together.ts";
import { cashLines, hoursLines, slotsLines } from "../../../dashboard/words/togetherBudgets.ts";
import { problemWords, setRefusal, whyLeft } from "../../../dashboard/words/togetherLeft.ts";
import { overrunWords } from "../../../dashboard/words/togetherOverrun.ts";
import {
  costTitle,
  hoursTitle,
  type MeritTold,
  meritSentence,
  meritTitle,
} from "../../../dashboard/words/togetherTitles.ts";
import { TOTAL } from "./answer.ts";

const BUDGETS = { hours: 8, cash: 150, slots: 2 };
const FREE = { hours: null, cash: null, slots: null };
const TOLD: SetTold = {
  objective: "netBenefit",
  budgets: BUDGETS,
  shadowPrices: { hour: 0, cash: 0, slot: 0 },
  proven: true,
  gap: 0,
  overruns: [],
  chosen: ["the plum hybrid", "the yellow folder"],
  candidates: ["the plum hybrid", "the yellow folder", "the roadster"],
  nextIn: { called: "the roadster", needs: { hours: 3.42, cash: 0, slots: 0 } },
};
const head = (more: Partial<SetTold>) => setHeadline({ ...TOLD, ...more }, 12, "EUR");

describe("the heading", () => {
  test("says how many fit, what one more hour is worth, and what would come next with what it lacks", () => {
    expect(head({})).toBe(
      "Two fit. One more hour is worth nothing yet; 3.5 h more would bring in the roadster.",
    );
    expect(head({ nextIn: { called: "the roadster", needs: { hours: 7, cash: 243.78, slots: 1 } } })).toBe(
      "Two fit. One more hour is worth nothing yet; 7 h, €245 and one place more would bring in the roadster.",
    );
  });

  test("names the first budget that is worth more of", () => {
    expect(head({ shadowPrices: { hour: 4.81, cash: 0.3, slot: 2 } })).toContain(
      "One more hour would be worth €5; ",
    );
    expect(head({ shadowPrices: { hour: 0, cash: 0.37, slot: 0 } })).toContain(
      "€1 more would be worth €0.37; ",
    );
    expect(
      head({
        shadowPrices: { hour: 0, cash: 0, slot: 47 },
        nextIn: { called: "the roadster", needs: { hours: 0, cash: 0, slots: 1 } },
      }),
    ).toBe("Two fit. One more place would be worth €47: room for the roadster.");
    expect(head({ budgets: { ...FREE, cash: 150 } })).toContain("€1 more is worth nothing yet; ");
  });

  test("where nothing fits", () => {
    expect(head({ chosen: [] })).toBe("Nothing fits. 3.5 h more would bring in the roadster.");
  });

  test("where nothing pays, by what is chosen for", () => {
    expect(head({ chosen: [], nextIn: null })).toBe("None of three pays your €12 an hour.");
    expect(head({ chosen: [], nextIn: null, objective: "margin" })).toBe("None of three leaves money.");
  });

  test("where all fit, and where all that pay do", () => {
    const all = { chosen: TOLD.candidates, nextIn: null, budgets: FREE };
    expect(head(all)).toBe("All three fit.");
    const two = TOLD.candidates.slice(0, 2);
    expect(head({ ...all, candidates: two, chosen: two })).toBe("Both fit.");
    expect(head({ ...all, chosen: TOLD.candidates.slice(0, 2) })).toBe("Two fit; nothing else would pay.");
    expect(head({ ...all, chosen: ["the plum hybrid"] })).toBe(
      "One fits: the plum hybrid; nothing else would pay.",
    );
    expect(head({ ...all, budgets: BUDGETS, shadowPrices: { hour: 5, cash: 0, slot: 0 } })).toBe(
      "All three fit. One more hour would be worth €5.",
    );
  });

  test("of one find", () => {
    const one = { candidates: ["the plum hybrid"], chosen: ["the plum hybrid"], nextIn: null };
    expect(head(one)).toBe("The plum hybrid fits.");
    expect(head({ ...one, chosen: [] })).toBe("The plum hybrid does not pay: leave it.");
    const next = { called: "the plum hybrid", needs: { hours: 0, cash: 35.5, slots: 0 } };
    expect(head({ ...one, chosen: [], nextIn: next })).toBe(
      "The plum hybrid does not fit. €36 more would bring it in.",
    );
  });

  test("of none with figures", () => {
    expect(head({ candidates: [], chosen: [], nextIn: null })).toBe(
      "None of these finds has figures to choose by.",
    );
  });

  test("says so where a better set is not ruled out", () => {
    expect(head({ proven: false, gap: 3.2 })).toMatch(
      / The best found; another set could be worth at most €3 more\.$/,
    );
    expect(head({ proven: false, gap: 0.07 })).toMatch(/at most €0\.07 more\.$/);
  });

  test("where what is held to does not fit", () => {
    const overruns: ComparisonAnswer["overruns"] = [
      { budget: "hours", given: 8, needs: 12.31, short: 4.31, freeing: [], explanation: "" },
      { budget: "slots", given: 2, needs: 3, short: 1, freeing: ["a"], explanation: "" },
    ];
    expect(head({ overruns, chosen: [], shadowPrices: null })).toBe(
      "What you hold to does not fit together: 4.4 h and one place too little.",
    );
    expect(overrunWords(overruns[0]!, "EUR")).toBe(
      "What you hold to needs 12.4 h; you have 8 h: 4.4 h too little.",
    );
  });
});

test("what is lacking is rounded up, so that it is enough", () => {
  expect(needsWords({ hours: 0.01, cash: 99.2, slots: 2 }, "EUR")).toBe("0.1 h, €100 and two places");
  expect(needsWords({ hours: 0, cash: 101, slots: 0 }, "EUR")).toBe("€105");
  expect(needsWords({ hours: 2.5, cash: 0, slots: 0 }, "EUR")).toBe("2.5 h");
  expect(needsWords({ hours: 0, cash: 0, slots: 0 }, "EUR")).toBeNull();
});

describe("the lines under the sliders", () => {
  const told = {
    budgets: BUDGETS,
    total: TOTAL,
    chanceHoursOverrun: 0.16,
    shadowPrices: { hour: 0, cash: 0, slot: 4.05 },
  };

  test("say what is used, how sure it fits, and what one more is worth", () => {
    expect(hoursLines(told, "EUR")).toEqual([
      "6.8 h used.",
      "Takes longer than your 8 h in 2 of 10.",
      "For 8 in 10, plan 7.8 h.",
      "One more hour is worth nothing yet.",
    ]);
    expect(cashLines(told, "EUR")).toEqual(["€86 in use.", "€1 more is worth nothing yet."]);
    expect(slotsLines(told, "EUR")).toEqual(["Both taken.", "One more would be worth €4."]);
  });

  test("say nothing of a limit where there is none, nor of figures where no set fits", () => {
    const free = { ...told, budgets: FREE, chanceHoursOverrun: 0 };
    expect(hoursLines(free, "EUR")).toEqual(["6.8 h used.", "For 8 in 10, plan 7.8 h."]);
    expect(slotsLines(free, "EUR")).toEqual(["Two taken."]);
    expect(hoursLines({ ...told, total: null }, "EUR")).toEqual([]);
  });

  test("count places", () => {
    const taken = (slots: number, given: number | null) =>
      slotsLines({ ...told, total: { ...TOTAL, slots }, budgets: { ...BUDGETS, slots: given } }, "EUR")[0];
    expect(taken(0, 2)).toBe("None taken.");
    expect(taken(1, 1)).toBe("Taken.");
    expect(taken(1, 3)).toBe("One of three taken.");
    expect(taken(3, 3)).toBe("All taken.");
  });
});

describe("why a find is left", () => {
  const left = { shown: { course: "restore", margin: { mean: 50 } }, pays: true, held: null } as const;
  const why = (more: object) => whyLeft({ ...left, needs: null, ...more }, "netBenefit", 12, "EUR");

  test("says what it lacks, or that it does not pay", () => {
    expect(why({ needs: { hours: 7, cash: 20, slots: 0 } })).toBe(
      "Would pay, no room: needs 7 h and €20 more.",
    );
    expect(why({ pays: false })).toBe("Does not pay your €12 an hour.");
    expect(why({ pays: false, shown: { course: "restore", margin: { mean: -3 } } })).toBe(
      "Does not pay: restoring, the best of its courses, loses money.",
    );
  });

  test("says nothing where no set fits, or where it is held", () => {
    expect(why({})).toBeNull();
    expect(why({ held: "restore" })).toBeNull();
  });
});

test("a find that cannot be worked out says why, or which held course is closed", () => {
  const price = { pointer: "/find/purchase/price", message: "price must be at least 0, not -4" };
  expect(problemWords([price], null, [])).toBe(
    "Not worked out. Asking price, or what you paid: must be at least 0, not -4.",
  );
  const course = { pointer: "/course", message: "course requires a course that is open" };
  expect(problemWords([course], "restore", [])).toBe(
    "Restoring is closed to this bike. Let it choose; its own page says why.",
  );
});

describe("the titles of the charts", () => {
  const merit = (more: Partial<MeritTold>) =>
    meritTitle({ chosen: 2, of: 7, hours: 8, nextIn: null, overrun: false, ...more });
  const next = { called: "the roadster", needsHours: true };

  test("the merit order tells what the hours hold and what comes next", () => {
    expect(merit({ nextIn: next })).toBe("8 hours hold two; the roadster comes next");
    expect(merit({ chosen: 1, hours: 1, nextIn: next })).toBe("1 hour holds one; the roadster comes next");
    expect(merit({ nextIn: { ...next, needsHours: false } })).toBe("Two are in; the roadster comes next");
    expect(merit({})).toBe("8 hours hold two; nothing else would pay");
    expect(merit({ chosen: 7, hours: null })).toBe("All seven are in");
    expect(merit({ overrun: true })).toBe("What you hold to does not fit");
  });

  test("the merit order in a sentence names best, worst and what crosses the goal", () => {
    const row = (name: string, rate: number) => ({ name, perHour: { rate, p10: rate - 5, p90: rate + 5 } });
    expect(meritSentence("Two are in", [row("A", 14), row("B", 20), row("C", -9)], 12, "EUR")).toBe(
      "Two are in. Best: B, €20 an hour, likely between €15 and €25. Worst: C, −€9 an hour, likely between −€14 and −€4. 1 of 3 ranges cross the goal of €12.",
    );
  });

  test("money against hours names the fastest and the largest", () => {
    const row = (called: string, rate: number, margin: number) => ({ called, chosen: true, rate, margin });
    expect(hoursTitle([row("the hybrid", 20, 90), row("the racer", 15, 125)])).toBe(
      "The hybrid earns most by the hour; the racer leaves most in all",
    );
    expect(hoursTitle([row("the hybrid", 20, 90), row("the racer", 15, 80)])).toBe(
      "The hybrid earns most by the hour, and in all",
    );
    expect(hoursTitle([row("the hybrid", -2, -9), row("the racer", -3, -9)])).toBe(
      "None of these leaves money",
    );
    expect(hoursTitle([row("the hybrid", 20, 90)])).toBe("The hybrid leaves money");
  });

  test("price against cash counts those above the line", () => {
    const [above, below] = [
      { value: 100, cost: 20 },
      { value: 10, cost: 20 },
    ];
    expect(costTitle([above, above, below])).toBe("Two of three sell for more than the cash in them");
    expect(costTitle([above, below])).toBe("One of two sells for more than the cash in it");
    expect(costTitle([below, below])).toBe("None sells for more than the cash in it");
    expect(costTitle([above])).toBe("It sells for more than the cash in it");
  });
});

test("a refusal of the whole question names the find that it is about", () => {
  const names = ["Plum hybrid", "Copper track bike"];
  const say = (pointer: string, message: string) => setRefusal({ pointer, message }, (i) => names[i], []);
  expect(say("/finds/1/find/purchase/price", "must be at least 0")).toMatch(/^Copper track bike: .*must be/);
  expect(say("/finds/0", "must be an object")).toBe("Plum hybrid: Must be an object.");
  expect(say("/finds/7/find/era", "is missing")).not.toMatch(/hybrid|track/);
  expect(say("/finds", "takes at most 50")).toBe("Takes at most 50.");
  expect(say("/budgets/hours", "must be at least 0")).not.toMatch(/hybrid|track/);
});
