import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stretches } from "../../../dashboard/selling/path.ts";
import {
  chartSentence,
  lowestMoney,
  planTitle,
  soldTitle,
  stepsWords,
  weekLines,
} from "../../../dashboard/words/selling.ts";
import { fallbackWords, sellingFacts } from "../../../dashboard/words/sellingFacts.ts";
import { marketHints } from "../../../dashboard/words/sellingMarket.ts";
import { offerWords } from "../../../dashboard/words/sellingOffer.ts";
import { roadWords } from "../../../dashboard/words/sellingRoad.ts";
import { buyersWords, marketWords, sheetNote } from "../../../dashboard/words/sellingSheet.ts";
import { pathOf, plan } from "./plan.ts";

const told = (prices: readonly number[], shown = false) =>
  planTitle(pathOf(prices), { currency: "EUR", road: "clear", shown });

describe("the plan in a sentence", () => {
  test("names the first price and when to come down, and the lowest offer only once it is shown", () => {
    const { path, currency } = plan();
    expect(planTitle(path, { currency, road: "clear", shown: false })).toBe(
      "Ask €350, come down in weeks 4 and 6.",
    );
    expect(planTitle(path, { currency, road: "clear", shown: true })).toBe(
      "Ask €350, come down in weeks 4 and 6, take €302 this week.",
    );
  });

  test("tells one step, none, many, and prices that rise with the season", () => {
    expect(told([80, 80, 75])).toBe("Ask €80, come down in week 3.");
    expect(told([80, 80, 80])).toBe("Ask €80, stay there.");
    expect(told([100, 95, 90, 85, 80])).toBe("Ask €100, come down from week 2 on.");
    expect(told([80, 90, 90])).toBe("Ask €80, go up in week 2.");
    expect(told([80, 90, 85])).toBe("Ask €80, change it in weeks 2 and 3.");
  });

  test("says that it is not roadworthy before anything else, in the advert's words", () => {
    const { path, currency } = plan();
    expect(planTitle(path, { currency, road: "not-roadworthy", shown: false })).toBe(
      "Not roadworthy, for repair or parts: ask €350, come down in weeks 4 and 6.",
    );
    expect(planTitle(path, { currency, road: "frame-withdrawn", shown: false })).toMatch(
      /^Not roadworthy, parts only, frame not sold: ask €350/,
    );
  });

  test("a price to the cent keeps its cents", () => {
    expect(told([79.5, 79.5])).toBe("Ask €79.50, stay there.");
  });
});

describe("the lowest offer", () => {
  test("is told so that an offer of just that is taken, and never above the price asked", () => {
    expect(lowestMoney(301.2, 350, "EUR")).toBe("€302");
    expect(lowestMoney(300, 350, "EUR")).toBe("€300");
    expect(lowestMoney(61.4, 90, "EUR")).toBe("€62");
    expect(lowestMoney(348.5, 348.5, "EUR")).toBe("€348.50");
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.integer({ min: 1, max: 5000 }),
        (lowest, price) => {
          const amount = Number(lowestMoney(lowest, price, "EUR").replace(/[€,]/g, ""));
          expect(amount).toBeLessThanOrEqual(price);
          expect(amount).toBeGreaterThanOrEqual(Math.min(lowest, price) - 1e-6);
        },
      ),
    );
  });

  test("stands in no word of the chart until it is shown", () => {
    const { path, currency } = plan();
    const [week] = path;
    expect(chartSentence(path, currency, false)).toBe(
      "Price over weeks. Half of all outcomes have sold by week 4, 9 in 10 by week 8. The asking price goes from €350 to €295 in 8 weeks.",
    );
    expect(chartSentence(path, currency, true)).toContain(
      "The lowest offer worth taking goes from €302 to €215.",
    );
    expect(weekLines(week!, currency, false)).toEqual(["ask €350", "sold by then in 2 of 10"]);
    expect(weekLines(week!, currency, true)).toEqual([
      "ask €350",
      "take €302 or more",
      "sold by then in 2 of 10",
    ]);
  });
});

describe("the weeks", () => {
  test("are joined where the price stays, and none is lost", () => {
    expect(stretches(plan().path).map(({ from, to, price }) => [from, to, price])).toEqual([
      [1, 3, 350],
      [4, 5, 325],
      [6, 8, 295],
    ]);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 60 }), (prices) => {
        const joined = stretches(pathOf(prices));
        expect(joined.flatMap(({ from, to, price }) => Array(to - from + 1).fill(price))).toEqual(prices);
        expect(joined.slice(1).every(({ price }, i) => price !== joined[i]?.price)).toBe(true);
      }),
    );
  });

  test("are told price by price", () => {
    expect(stepsWords(plan().path, "EUR")).toBe(
      "€350 in weeks 1 to 3, €325 in weeks 4 to 5, €295 from week 6 on.",
    );
    expect(stepsWords(pathOf([90, 85, 80, 75, 70, 65, 65]), "EUR")).toBe(
      "€90 in week 1, €85 in week 2, €80 in week 3, and so on, at last €65 from week 6 on.",
    );
    expect(stepsWords(pathOf([80]), "EUR")).toBe("€80 in week 1.");
    expect(stepsWords(pathOf([80, 80]), "EUR")).toBe("€80 in weeks 1 to 2.");
  });

  test("say when half have sold, or how many ever do", () => {
    expect(soldTitle(plan().path)).toBe("Half of all outcomes have sold by week 4, 9 in 10 by week 8");
    const slow = plan().path.map((week) => ({ ...week, chanceSold: week.chanceSold / 2 }));
    expect(soldTitle(slow)).toBe("It has sold in 5 of 10 outcomes by week 8");
    expect(soldTitle([{ week: 1, price: 50, chanceSold: 0.6, lowestOffer: 30 }])).toBe(
      "Half of all outcomes have sold by week 1",
    );
  });
});

describe("what it comes to", () => {
  const fact = (name: RegExp, of = plan()) => sellingFacts(of).find((one) => name.test(one.name));

  test("every figure with its range or its unit", () => {
    expect(sellingFacts(plan()).map(({ name, figure, more }) => `${name}: ${figure}, ${more}`)).toEqual([
      "What it brings: €300, on average, likely €190 to €335",
      "Until it is gone: 3.9 weeks, on average, likely 0.6 to 8",
      "Not sold in 8 weeks: 1 in 10, then a quick sale at about €190",
      "What round prices cost: €1, against prices to the cent",
      "Holding it for the season: not worth it, no later month brings more than keeping it costs",
    ]);
  });

  test("holding it: a month and its gain, or that the month is not known", () => {
    expect(fact(/Holding/, plan({ holdUntil: { month: 5, gain: 23 } }))).toMatchObject({
      figure: "until May",
      more: "brings about €23 more, after what keeping it costs",
    });
    const { market } = plan();
    expect(fact(/Holding/, plan({ market: { ...market, month: null } }))?.figure).toBe("not known");
  });

  test("what is done where it has not sold", () => {
    expect(fallbackWords({ kind: "parts", amount: 62 }, "EUR")).toBe("broken for parts, about €62");
    expect(fallbackWords({ kind: "given", amount: 100 }, "EUR")).toBe("the €100 you set");
    expect(fact(/round/, plan({ roundingCost: 0.2 }))?.figure).toBe("next to nothing");
  });
});

describe("an offer", () => {
  const answered = (answer: "accept" | "counter" | "wait", counter: number | null = null) =>
    offerWords(
      {
        answer,
        counter,
        counterChance: counter === null ? null : 0.5,
        carryingOn: 290,
        reason: "carrying on is worth 282 EUR: more than 280 EUR",
        goingRate: { p10: 250, p50: 305, p90: 370 },
      },
      { amount: 280, week: 2 },
      plan(),
    );

  test("is taken, met with another price, or left, with the reason and what it would fetch after it", () => {
    expect(answered("accept").advice).toBe("Take it.");
    expect(answered("wait").advice).toBe("Wait.");
    expect(answered("counter", 310)).toEqual({
      advice: "Ask €310 back.",
      about: "€280 in week 2",
      reason: "Carrying on is worth €282: more than €280.",
      rate: "After this offer it would fetch about €305 in place of €320, likely €250 to €370.",
    });
  });
});

describe("terms", () => {
  test("a term left empty names what stands in; one that is set does not", () => {
    const hints = marketHints(plan(), { weeks: 6 });
    expect(hints.weeks).toBe("");
    expect(hints.storagePerWeek).toMatch(/^Left empty: €2\.50 a week\./);
    expect(hints.arrivalsPerWeek).toMatch(/^Left empty: 1\.6 buyers a week\./);
    expect(hints.haggling).toMatch(/^Left empty: 5 %\./);
    expect(hints.fallback).toMatch(/^Left empty: a quick sale at about €190\./);
    expect(marketHints(null, {}).haggling).not.toContain("Left empty");
  });

  test("stand on the sheet in a sentence, with what is invented", () => {
    expect(marketWords(plan().market, "EUR")).toBe(
      "8 weeks, put up for sale in April; 1.6 buyers a week, who talk off 5 %; keeping it costs €2.50 a week.",
    );
    expect(buyersWords(1)).toBe("1 buyer a week");
    for (const invented of [true, false]) expect(sheetNote(invented)).toMatch(/invented/i);
  });
});

describe("riding", () => {
  test("faults that stop riding, checks owed, or nothing in the way", () => {
    const open = { kind: "open", stops: [], owed: [] } as const;
    expect(roadWords({ ...open, road: "clear" })).toBeNull();
    expect(roadWords({ ...open, road: "not-roadworthy", stops: ["Chain"], owed: ["Fork"] })).toEqual({
      said: "Not roadworthy: say so in the title.",
      because: "Stops riding: Chain. Still to be looked at: one check: Fork.",
    });
    expect(roadWords({ ...open, road: "clear", owed: ["A", "B", "C", "D", "E"] })?.because).toMatch(
      /Still to be looked at: five checks\.$/,
    );
    expect(roadWords({ ...open, road: "frame-withdrawn", stops: ["Frame cracks"] })?.said).toBe(
      "The frame is not sold.",
    );
  });
});
