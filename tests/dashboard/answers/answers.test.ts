import { describe, expect, test } from "vitest";
import {
  type Answers,
  isComplete,
  NO_ANSWERS,
  withAnswer,
  withAttribute,
  withObservation,
} from "../../../dashboard/answers/answers.ts";
import { bodyOf } from "../../../dashboard/answers/body.ts";
import { parsedAnswers } from "../../../dashboard/answers/parsed.ts";
import { check, STRING_TEST } from "../fixtures/check.ts";

const FOUR = { category: "hybrid", era: "1990s", frameMaterial: "steel", componentTier: "mid" };
const CHECKS = [check(), STRING_TEST, check({ id: "tyre-condition", perWheel: true })];

describe("the question put to the API", () => {
  test("leaves out what is unknown", () => {
    expect(bodyOf({ attributes: FOUR, observations: {} }, CHECKS, 12)).toEqual({
      find: FOUR,
      observations: {},
      workshop: { hourlyGoal: 12 },
    });
  });

  test("carries price, payment, month and numbers where the API expects them", () => {
    const answers: Answers = {
      attributes: { ...FOUR, kept: "indoors" },
      price: 0,
      paid: true,
      month: 4,
      rearSprockets: 7,
      tyreMarking: "37-622",
      originality: 0.8,
      observations: { headset: { level: "rough" } },
    };
    expect(bodyOf(answers, CHECKS, 12)).toEqual({
      find: {
        ...FOUR,
        kept: "indoors",
        rearSprockets: 7,
        tyreMarking: "37-622",
        originality: 0.8,
        purchase: { price: 0, paid: true },
      },
      observations: { headset: { level: "rough" } },
      workshop: { hourlyGoal: 12, month: 4 },
    });
  });

  const sent = (observations: Answers["observations"]) =>
    bodyOf({ attributes: FOUR, observations }, CHECKS, 12).observations;

  test("holds a measurement back until every needed input is there", () => {
    expect(sent({ "rear-alignment": { measured: { left: 41 } } })).toEqual({});
    expect(sent({ "rear-alignment": { measured: { left: 41, headToAxle: 900 } } })).toEqual({});
    expect(sent({ "rear-alignment": { measured: { left: 41, right: 40 } } })).toEqual({
      "rear-alignment": { measured: { left: 41, right: 40 } },
    });
  });

  test("sends level and flags of a measurement that is held back", () => {
    expect(sent({ "rear-alignment": { level: "true", flags: ["sprung"], measured: { left: 41 } } })).toEqual({
      "rear-alignment": { level: "true", flags: ["sprung"] },
    });
  });

  test("sends front and rear apart, and one wheel alone", () => {
    expect(sent({ "tyre-condition": { rear: { level: "rough" } } })).toEqual({
      "tyre-condition": { rear: { level: "rough" } },
    });
    expect(sent({ "tyre-condition": { front: {}, rear: {} } })).toEqual({});
  });

  test("leaves out checks that the catalogue no longer holds", () => {
    expect(sent({ gone: { level: "rough" } })).toEqual({});
  });
});

describe("answers", () => {
  test("are enough once the four picks are made", () => {
    expect(isComplete(NO_ANSWERS)).toBe(false);
    expect(isComplete({ attributes: FOUR, observations: {} })).toBe(true);
  });

  test("that are taken back are unknown again", () => {
    const said = withObservation(
      withAttribute(withAnswer(NO_ANSWERS, "price", 20), "kept", "indoors"),
      "headset",
      { level: "rough" },
    );
    const back = withObservation(
      withAttribute(withAnswer(said, "price", undefined), "kept", undefined),
      "headset",
      undefined,
    );
    expect(back).toEqual(NO_ANSWERS);
    expect(said.price).toBe(20);
  });
});

describe("answers kept in the browser", () => {
  test("come back as they were", () => {
    const answers: Answers = {
      attributes: FOUR,
      price: 20,
      paid: false,
      month: 5,
      tyreMarking: "32-622",
      observations: {
        headset: { level: "rough" },
        "rear-alignment": { measured: { left: 41 }, flags: ["sprung"] },
        "tyre-condition": { front: { level: "good" } },
      },
    };
    expect(parsedAnswers(JSON.parse(JSON.stringify(answers)))).toEqual(answers);
  });

  test.each([null, 3, "text", [], { attributes: 7, observations: [] }])(
    "that are nonsense (%j) are no answers",
    (kept) => {
      expect(parsedAnswers(kept)).toEqual(NO_ANSWERS);
    },
  );

  test("keep what is whole when part of them is damaged", () => {
    const kept = {
      attributes: { category: "hybrid", era: 1990 },
      price: "20",
      month: 4,
      observations: {
        headset: { level: 3 },
        rust: { level: "none" },
        axle: null,
        tyre: { front: { level: 1 } },
      },
    };
    expect(parsedAnswers(kept)).toEqual({
      attributes: { category: "hybrid" },
      month: 4,
      observations: { rust: { level: "none" } },
    });
  });
});
