import { describe, expect, test } from "vitest";
import { vocabularyOf } from "../../../dashboard/ownPrices/vocabulary.ts";
import type { Value } from "../../../dashboard/sale/states.ts";
import { stepFacts } from "../../../dashboard/sale/stepFacts.ts";
import { fraction, shareSentence, weightWords } from "../../../dashboard/words/ownShare.ts";
import {
  askedSentence,
  movedWords,
  otherStatesTitle,
  PLAIN_BIKE,
  saleTitle,
  stepMoney,
  stepWords,
  threeMoreTitle,
  waterfallTitle,
  widthWords,
} from "../../../dashboard/words/sale.ts";
import design from "../../../data/value-drivers.json" with { type: "json" };
import { DRIVERS } from "../../../worker/engine/valuation/driver.ts";
import { referenceOf } from "../fixtures/service.ts";

/** Invented figures: 8 in 10 from four fifths to five quarters of the middle. */
const band = (p50: number) => ({ p10: 0.8 * p50, p25: 0.9 * p50, p50, p75: 1.1 * p50, p90: 1.25 * p50 });
const VALUE = {
  asFound: band(82),
  madeSafe: band(204),
  restored: band(221),
  parts: band(55),
  referencePrice: 222,
  pieces: [],
  drivers: [],
  extrapolates: false,
  comparables: [],
  ownShare: 0,
  askedFactor: 1.05,
  threeMore: { state: "madeSafe", now: { p10: 160, p90: 260 }, after: { p10: 175, p90: 250 } },
} satisfies Value as Value;

describe("what to ask, in a sentence", () => {
  test("names state, middle and range, with their currency", () => {
    expect(saleTitle(VALUE, "madeSafe", "EUR")).toBe(
      "Made safe it sells for about €205, likely between €165 and €255.",
    );
    expect(saleTitle(VALUE, "parts", "GBP")).toBe(
      "As parts it sells for about £55, likely between £44 and £69.",
    );
  });

  test("says where the data know nothing like it, and gives no range that is none", () => {
    expect(saleTitle({ ...VALUE, extrapolates: true }, "madeSafe", "EUR")).toMatch(
      / Unlike anything in the data, so the range is wide\.$/,
    );
    const narrow = { ...VALUE, parts: { p10: 5.1, p25: 5.2, p50: 5.2, p75: 5.3, p90: 5.4 } };
    expect(saleTitle(narrow, "parts", "EUR")).toBe("As parts it sells for about €5, hardly more or less.");
    expect(saleTitle({ ...VALUE, madeSafe: null }, "madeSafe", "EUR")).toBe("");
  });

  test("holds the other states against it by the figures shown", () => {
    expect(otherStatesTitle(VALUE, "madeSafe", "EUR")).toBe(
      "Restored it fetches about €15 more, as found €125 less",
    );
    expect(otherStatesTitle({ ...VALUE, restored: band(206) }, "madeSafe", "EUR")).toMatch(
      /^Restored it fetches about the same, as found/,
    );
    const alone = { ...VALUE, madeSafe: null, restored: null };
    expect(otherStatesTitle(alone, "parts", "EUR")).toBe("As found it fetches about €27 more");
  });
});

describe("where a range comes from", () => {
  test.each([
    [0, 0, "All of this estimate comes from invented demo sales."],
    [
      0.02,
      1,
      "Hardly any of this estimate comes from your one sale; nearly all of it from invented demo sales.",
    ],
    [0.1, 2, "One tenth of this estimate comes from your 2 sales, the rest from invented demo sales."],
    [0.5, 3, "Half of this estimate comes from your 3 sales, the rest from invented demo sales."],
    [0.71, 5, "Seven tenths of this estimate come from your 5 sales, the rest from invented demo sales."],
    [
      0.99,
      1200,
      "Nearly all of this estimate comes from your 1,200 sales, the little rest from invented demo sales.",
    ],
  ])("a share of %f from %i sales", (share, sales, said) => {
    expect(shareSentence(share, sales)).toBe(said);
  });

  test("several ranges at once", () => {
    expect(shareSentence(0, 0, "these estimates")).toBe(
      "All of these estimates come from invented demo sales.",
    );
    expect(shareSentence(0.5, 2, "these estimates")).toMatch(
      /^Half of these estimates come from your 2 sales, /,
    );
  });

  test("the weight of one sale in plain fractions", () => {
    expect(weightWords(0.33)).toBe("counts for a third of the estimate");
    expect(weightWords(0.02)).toBe("counts for less than a twentieth of the estimate");
    expect(weightWords(0.001)).toBe("counts for hardly anything");
    expect(weightWords(-0.05)).toMatch(/the other way/);
    expect([0.05, 0.24, 0.5, 0.7, 0.97].map(fraction)).toEqual([
      "a twentieth",
      "a quarter",
      "half",
      "two thirds",
      "nearly all",
    ]);
  });

  test("how far one sale moves the middle", () => {
    expect(movedWords(380, 420, "EUR")).toBe("€380 to €420");
    expect(movedWords(419.8, 420, "EUR")).toBe("hardly: €420");
  });

  test("what adverts ask, and who says so", () => {
    expect(askedSentence(1.05, 0)).toBe(
      "An asking price is brought down first: adverts ask about 5 % more than bicycles go for (an invented figure, until you add asking prices of your own).",
    );
    expect(askedSentence(0.97, 2)).toMatch(/3 % less .* \(learned in part from your 2 asking prices\)\.$/);
    expect(askedSentence(1.001, 1)).toMatch(/as it stands.* your one asking price/);
  });
});

describe("what is said of the bike beside the steps", () => {
  test("stands in the catalogue's words; what is unknown is left out", async () => {
    const words = vocabularyOf(await referenceOf());
    const find = { category: "tandem", era: "1990s", frameMaterial: "steel", componentTier: "mid" } as const;
    expect(stepFacts(find, words)).toEqual({ kind: "tandem, mid tier", era: "1990s", material: "steel" });
  });
});

describe("three more sales", () => {
  test("narrow the range by a plain fraction, or hardly", () => {
    expect(threeMoreTitle(VALUE.threeMore)).toBe(
      "Three more sales like it would narrow the range by a quarter",
    );
    const same = { ...VALUE.threeMore, after: VALUE.threeMore.now };
    expect(threeMoreTitle(same)).toBe("Three more sales like it would hardly narrow the range");
    const none = { ...VALUE.threeMore, now: { p10: 0, p90: 0 }, after: { p10: 0, p90: 0 } };
    expect(threeMoreTitle(none)).not.toMatch(/NaN/);
  });

  test("are told with widths in money and per cent", () => {
    expect(widthWords({ p10: 160, p90: 250 }, "EUR")).toBe("€160 to €250: €90 wide, 45 % of its middle");
    expect(widthWords({ p10: 0, p90: 0 }, "EUR")).toBe("about €0: €0 wide");
  });
});

describe("the steps of a price", () => {
  test("carry their sign and currency", () => {
    expect([34, -12, -0.2].map((change) => stepMoney(change, "EUR"))).toEqual(["+€34", "\u2212€12", "€0"]);
  });

  test("have words for every driver that the API can name, none of them its id", () => {
    // The level is the reference price itself, and asking moves comparables alone.
    for (const term of [...DRIVERS, "limit", "rest"].filter((one) => one !== "level" && one !== "asked")) {
      const { name, why } = stepWords(term, "madeSafe");
      expect(why, term).not.toBe("");
      expect(name, term).not.toBe(term);
    }
    expect(stepWords("state", "parts").name).toBe("Sold as parts");
  });

  test("start from the plain bike of the price model's own design", () => {
    const { category, tier } = design.design.reference;
    expect(PLAIN_BIKE).toContain(category);
    expect(PLAIN_BIKE).toContain(`${tier} tier`);
    expect(waterfallTitle(VALUE, "madeSafe", "EUR")).toBe(
      "A plain bicycle fetches €220; this one, made safe, €205",
    );
  });
});
