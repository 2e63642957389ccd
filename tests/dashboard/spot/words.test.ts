import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { LookStep } from "../../../dashboard/spot/trail.ts";
import {
  afterThis,
  factsWords,
  foundWords,
  moveWords,
  offerWords,
  seenTitle,
  whyWords,
} from "../../../dashboard/words/spot.ts";
import { barWords } from "../../../dashboard/words/spotBar.ts";
import {
  atPrice,
  beforeYouPay,
  elsewhereTitle,
  endWords,
  leftAtPrice,
  offerAdvice,
} from "../../../dashboard/words/spotEnd.ts";
import { briefWords, LOOK_WORDS, levelFound } from "../../../dashboard/words/spotLooks.ts";
import { appraisal, COURSES, decided, open } from "../fixtures/appraisal.ts";
import { check } from "../fixtures/check.ts";

interface Row {
  readonly id: string;
  readonly where: string;
  readonly how: string;
  readonly levels: readonly { readonly id: string }[];
}
const CATALOGUE = JSON.parse(
  readFileSync(new URL("../../../data/checks.json", import.meta.url), "utf8"),
) as Row[];

const seen = (more: Partial<LookStep> = {}): LookStep => ({
  kind: "look",
  how: "seen",
  check: "headset",
  position: null,
  set: { level: "smooth" },
  ...more,
});

describe("the words of the looks", () => {
  const here = CATALOGUE.filter(({ where }) => where === "spot");

  test("name every check that is made on the spot, and none besides", () => {
    expect(Object.keys(LOOK_WORDS).sort()).toEqual(here.map(({ id }) => id).sort());
  });

  test.each(here)("say in short how to look: $id", (row) => {
    const words = LOOK_WORDS[row.id]!;
    expect(words.ask.length).toBeLessThanOrEqual(30);
    expect(briefWords(row).length).toBeLessThanOrEqual(175);
    expect(Object.keys(words.found ?? {}).every((level) => row.levels.some(({ id }) => id === level))).toBe(
      true,
    );
    expect(JSON.stringify(words)).not.toMatch(/\b(safe|grade|excellent|guaranteed|score|deal)\b|!/i);
  });

  test("keep to the level's own word where it cannot be misread", () => {
    const cracks = { id: "frame-cracks", levels: [] };
    expect(levelFound(cracks, "none")).toBe("no crack seen");
    expect(levelFound(cracks, "paint-line")).toBe("Paint line");
  });
});

describe("what a look changed", () => {
  test.each([
    [{ offerBefore: 24.2, offerAfter: 41.3 }, "Offer up from €24 to €41.", "€24 \u2192 €41"],
    [{ offerBefore: 41.3, offerAfter: 24.2 }, "Offer down from €41 to €24.", "€41 \u2192 €24"],
    [{ offerBefore: 41.3, offerAfter: 41.4 }, "Offer stays €41.", "stays €41"],
    [{ offerAfter: 41 }, "Offer now €41.", ""],
    [{ offerBefore: 41 }, null, ""],
  ])("%j", (step, sentence, short) => {
    expect(offerWords(step, "EUR")).toBe(sentence);
    expect(moveWords(step, "EUR")).toBe(short);
  });

  test("says what was found where, and what was not", () => {
    const headset = check();
    expect(foundWords(headset, seen(), "Smooth")).toBe("Headset: smooth");
    expect(foundWords(headset, seen({ position: "rear" }), "Smooth")).toBe("Headset, rear: smooth");
    expect(foundWords(headset, seen({ how: "cannot-tell" }), "")).toBe("Headset: can\u2019t tell");
    expect(foundWords(headset, seen({ how: "later" }), "")).toBe("Headset: later");
  });

  test("sums the looks up", () => {
    const steps = [seen({ offerBefore: 18, offerAfter: 24 }), seen({ offerBefore: 24, offerAfter: 41 })];
    expect(seenTitle(steps, "EUR")).toBe("Two looks have raised your offer from €18 to €41");
    expect(seenTitle([seen({ offerBefore: 24, offerAfter: 18 })], "EUR")).toBe(
      "One look has lowered your offer from €24 to €18",
    );
    expect(seenTitle([seen({ offerBefore: 24, offerAfter: 24.1 })], "EUR")).toBe(
      "One look has left your offer at €24",
    );
    expect(seenTitle([seen()], "EUR")).toBe("One look so far");
  });
});

describe("the bar", () => {
  const terms = { price: 70, paid: false, decided: true };
  const leaving = appraisal({ decision: decided({ course: "leave", walkAwayPrice: 41 }) });

  test("asks to look on until enough is known, then says what to do", () => {
    const open = { ...terms, decided: false };
    expect(barWords(appraisal(), open)).toMatchObject({ title: "Look on before you offer", course: null });
    expect(barWords(appraisal(), { ...open, paid: true }).title).toBe("Look on before you start");
    expect(barWords(leaving, open).title).toBe("Look on before you leave it");
    expect(barWords(appraisal(), terms)).toMatchObject({
      title: "Sell it as found",
      course: "sell-as-found",
    });
  });

  test("says that it is too dear where a lower price would do, and leave where none would", () => {
    expect(barWords(leaving, terms).title).toBe("Not for €70");
    expect(barWords(leaving, { ...terms, price: 30 }).title).toBe("Leave it");
    const never = appraisal({ decision: decided({ course: "leave", walkAwayPrice: 0 }) });
    expect(barWords(never, terms).title).toBe("Leave it");
    const hardly = appraisal({ decision: decided({ course: "leave", walkAwayPrice: 0.3 }) });
    expect(barWords(hardly, terms).title).toBe("Leave it");
  });

  test("says at which price, with the range", () => {
    expect(barWords(appraisal(), terms).line).toBe(
      "At the €70 asked: €14 an hour, likely between €6 and €22",
    );
    expect(barWords(appraisal(), { ...terms, price: 0 }).line).toMatch(/^For nothing: €14 an hour/);
    expect(barWords(appraisal(), { ...terms, price: undefined }).line).toMatch(
      /^Price not known\. For nothing: €14 an hour/,
    );
    expect(barWords(appraisal(), { ...terms, paid: true }).line).toMatch(/^€14 an hour/);
    expect(barWords(leaving, terms).line).toMatch(/^At the €70 asked: sell as found €14 an hour/);
  });

  test("has no money where everything is stopped", () => {
    const stopped = appraisal({
      decision: decided({ stop: "serial", walkAwayPrice: null }),
      cautions: [
        {
          id: "serial",
          title: "Stolen",
          kind: "hard",
          text: "Do not pay.",
          because: "Serial number: Filed",
          bears: { checks: ["serial"], operations: [] },
        },
      ],
    });
    const words = barWords(stopped, terms);
    expect(words).toEqual({
      title: "Stopped. Serial number: filed",
      course: null,
      line: "Do not pay, do not bargain.",
    });
    expect(JSON.stringify(words)).not.toContain("€");
  });
});

describe("the end of looking", () => {
  test("tells enough from all, and from what is left", () => {
    expect(endWords(0, 3, 1)).toEqual({
      title: "Enough looked at",
      line: "No other look is worth its minute.",
    });
    expect(endWords(0, 0, 1).title).toBe("All looked at");
    expect(endWords(2, 3, 1).line).toBe("Two looks are still worth their minute.");
    expect(endWords(1, 3, 1).line).toBe("One look is still worth its minute.");
    expect(endWords(0, 3, 0).title).toBe("No look pays here");
    expect(afterThis(0)).toBe("After this, no other look is worth its minute.");
    expect(afterThis(1)).toBe("After this, one more look is worth its minute.");
    expect(afterThis(2)).toBe("After this, two more looks are worth their minute.");
  });

  test("says at which price an hour earns just the goal, and what a lower one adds", () => {
    // Sell as found: margin 28 in 2 hours at 70 asked; 30 more or less is 15 an hour less or more.
    expect(offerAdvice(appraisal(), { goal: 12, price: 70 })).toEqual([
      "They ask €70.",
      "At €30 you earn just your €12 an hour.",
      "Every €10 less adds about €5 to each hour.",
    ]);
    expect(atPrice(appraisal(), { price: 70, offer: 40 })).toBe("At €40: €29 an hour.");
    expect(atPrice(appraisal(), { price: undefined, offer: 28 })).toBe("At €28: €0 an hour.");
    expect(leftAtPrice(appraisal(), { price: 70, offer: 40 })).toBe(
      "The whole job leaves €58, likely between €42 and €74.",
    );
    expect(leftAtPrice(appraisal({ courses: [] }), { price: 70, offer: 40 })).toBeNull();
    // Leaving it keeps the parts that were bought: the goal is earned beside what they are worth.
    const courses = COURSES.map((one) => (one.course === "leave" ? open("leave", 18, 0, { width: 0 }) : one));
    expect(offerAdvice(appraisal({ courses }), { goal: 12, price: 70 })[1]).toBe(
      "At €30 you earn just your €12 an hour and the €18 that the parts you bought are worth unused.",
    );
    const never = appraisal({ decision: decided({ walkAwayPrice: 0 }) });
    expect(offerAdvice({ ...never, courses }, { goal: 12, price: 70 })[1]).toBe(
      "Even for nothing, an hour earns less than your €12 beyond the €18 that the parts you bought are worth unused.",
    );
    expect(offerAdvice(never, { goal: 12, price: undefined })).toEqual([
      "What they ask is not known.",
      "Even for nothing, an hour earns less than your €12.",
    ]);
  });

  test("names what is to be asked before any money changes hands", () => {
    expect(elsewhereTitle(1, 2, false)).toBe("Worth finding out before you pay");
    // Nobody pays twice.
    expect(elsewhereTitle(1, 2, true)).toBe("Worth finding out before you start");
    expect(elsewhereTitle(0, 1, true)).toBe("Worth a look at home, before you start");
    expect(beforeYouPay([])).toBe("");
    expect(beforeYouPay(["Papers"])).toBe("Before you pay, still to ask: papers.");
    expect(beforeYouPay(["Serial number", "Papers"])).toBe(
      "Before you pay, still to ask: serial number and papers.",
    );
  });

  test("says what was asked and how long was looked", () => {
    expect(factsWords({ price: 70, paid: false, looks: 4, spent: 3 }, "EUR")).toEqual({
      price: "Asks €70",
      looks: "4 looks, 3 min",
    });
    expect(factsWords({ price: undefined, paid: false, looks: 0, spent: 0 }, "EUR")).toEqual({
      price: "Price not known",
      looks: "not looked at yet",
    });
    expect(factsWords({ price: 0, paid: true, looks: 1, spent: 1 }, "EUR").price).toBe("Paid nothing");
  });

  test("says why a look is next", () => {
    const worth = { offerSwing: 20.4, couldBecome: null, owed: false };
    expect(whyWords(check(), worth, "EUR")).toBe("Could move your offer by €20. 1 min, no tools.");
    expect(whyWords(check({ tools: ["hex-key", "torch"] }), null, "EUR")).toBe("1 min, hex key, torch.");
    expect(whyWords(check(), { ...worth, offerSwing: null, couldBecome: "leave" }, "EUR")).toMatch(
      /^Could change the advice to: leave\./,
    );
    expect(whyWords(check(), { ...worth, offerSwing: 0.2, owed: true }, "EUR")).toMatch(
      /^Owed before riding/,
    );
  });
});
