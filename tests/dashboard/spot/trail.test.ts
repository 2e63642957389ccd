import { describe, expect, test } from "vitest";
import { NO_ANSWERS } from "../../../dashboard/answers/answers.ts";
import { parsedTrails } from "../../../dashboard/spot/parsedTrail.ts";
import { type LookStep, lastOf, looksOf, type Step, taken, undone } from "../../../dashboard/spot/trail.ts";
import { openTrails } from "../../../dashboard/spot/trails.ts";
import { shelf } from "../../../dashboard/state/shelf.ts";

const seen = (check: string, level: string, more: Partial<LookStep> = {}): LookStep => ({
  kind: "look",
  how: "seen",
  check,
  position: null,
  set: { level },
  ...more,
});
const STEPS: readonly Step[] = [
  { kind: "pick", name: "category", set: "hybrid" },
  { kind: "price", set: 70 },
  seen("headset", "loose"),
  { kind: "look", how: "cannot-tell", check: "rust", position: null },
  seen("headset", "rough", { before: { level: "loose" } }),
  { kind: "price", before: 70 },
];

describe("the trail", () => {
  test("walks forward and back through every kind of step, and ends where it began", () => {
    const after = STEPS.reduce(taken, NO_ANSWERS);
    expect(after).toEqual({
      attributes: { category: "hybrid" },
      observations: { headset: { level: "rough" } },
    });
    let answers = after;
    let trail = STEPS;
    const undoneKinds: string[] = [];
    for (let last = lastOf(answers, trail); last !== null; last = lastOf(answers, trail)) {
      undoneKinds.push(last.step.kind);
      answers = undone(answers, last.step);
      trail = last.rest;
    }
    expect(undoneKinds).toEqual(["price", "look", "look", "look", "price", "pick"]);
    expect(answers).toEqual(NO_ANSWERS);
  });

  test("passes by a step that was overtaken elsewhere, so that undo never brings back an older answer", () => {
    const trail = [seen("headset", "loose"), seen("rust", "none")];
    const elsewhere = {
      ...NO_ANSWERS,
      observations: { headset: { level: "loose" }, rust: { level: "deep" } },
    };
    expect(lastOf(elsewhere, trail)?.step).toEqual(trail[0]);
    expect(lastOf({ ...NO_ANSWERS, observations: { headset: { level: "seized" } } }, [trail[0]!])).toBeNull();
  });

  test("tells each look as it was last answered", () => {
    const looks = looksOf(STEPS);
    expect(looks.map(({ check, how }) => [check, how])).toEqual([
      ["rust", "cannot-tell"],
      ["headset", "seen"],
    ]);
    expect(looks[1]?.set).toEqual({ level: "rough" });
  });
});

describe("the trails kept", () => {
  const memory = () => {
    const held = new Map<string, string>();
    return {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, value: string) => void held.set(key, value),
    };
  };

  test("come back as they were, without those of finds that are gone", () => {
    const store = memory();
    const trails = openTrails(shelf(store, "spot"));
    trails.put("gone", [STEPS[0]!], ["gone"]);
    trails.put("here", STEPS, ["here"]);
    const again = openTrails(shelf(store, "spot"));
    expect(again.of("here")).toEqual(STEPS);
    expect(again.of("gone")).toEqual([]);
  });

  test("keep the newest 200 steps", () => {
    const trails = openTrails(shelf(null, "spot"));
    const many = Array.from({ length: 250 }, (_, i): Step => ({ kind: "price", set: i }));
    trails.put("here", many, ["here"]);
    expect(trails.of("here")).toHaveLength(200);
    expect(trails.of("here").at(-1)).toEqual({ kind: "price", set: 249 });
  });

  test.each([
    null,
    "text",
    { trails: [] },
    { trails: { a: "no list" } },
    {
      trails: {
        a: [
          1,
          { kind: "look", check: 3 },
          { kind: "look", check: "rust", position: "left", how: "seen" },
          { kind: "pick" },
          { kind: "look", check: "rust", position: null, how: "felt" },
        ],
      },
    },
  ])("leave out what is damaged: %j", (kept) => {
    expect(Object.values(parsedTrails(kept)).flat()).toEqual([]);
  });

  test("drop the damaged part of a step, not the step", () => {
    const kept = {
      trails: {
        a: [
          {
            kind: "look",
            check: "rust",
            position: null,
            how: "seen",
            set: { level: 3 },
            offerBefore: "x",
            offerAfter: 4,
          },
        ],
      },
    };
    expect(parsedTrails(kept).a).toEqual([
      { kind: "look", check: "rust", position: null, how: "seen", offerAfter: 4 },
    ]);
  });
});
