import { describe, expect, test } from "vitest";
import { NO_ANSWERS } from "../../../dashboard/answers/answers.ts";
import { answersOf } from "../../../dashboard/answers/answersOf.ts";
import { bodyOf } from "../../../dashboard/answers/body.ts";
import { parsedAnswers } from "../../../dashboard/answers/parsed.ts";
import { copyName, copyOf } from "../../../dashboard/finds/copy.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { withGoal } from "../../../dashboard/finds/find.ts";
import { asFind, openOwnFinds } from "../../../dashboard/finds/own.ts";
import { isInvented, ownership } from "../../../dashboard/finds/ownership.ts";
import { shelf } from "../../../dashboard/state/shelf.ts";
import { referenceOf } from "../fixtures/service.ts";

const { checks } = await referenceOf();
const [PLUM] = DEMO_FINDS;
if (PLUM === undefined) throw new Error("the demo data must hold a find");

describe("a question turned back into answers", () => {
  test.each(DEMO_FINDS.map((find) => [find.name, find] as const))(
    "%s: the answers put the same question, also once they were kept",
    (_, { body }) => {
      const asked = withGoal(body, 12);
      expect(bodyOf(answersOf(body), checks, 12)).toEqual(asked);
      const kept = parsedAnswers(JSON.parse(JSON.stringify(answersOf(body))));
      expect(bodyOf(kept, checks, 12)).toEqual(asked);
    },
  );

  test("leaves out the goal and prices of one's own, which are no answers", () => {
    const priced = {
      ...PLUM.body,
      workshop: { hourlyGoal: 99, month: 4, partPrices: { chain: 5 } },
      comparables: [],
    };
    expect(answersOf(priced)).toEqual(answersOf(PLUM.body));
  });
});

describe("a copy to ask what if", () => {
  const own = { id: "own-1", name: "Hill bike", answers: { ...NO_ANSWERS, price: 7 } };
  const hill = { ...PLUM, id: own.id, name: own.name, invented: false };

  test("of one's own find holds its answers and remembers its original", () => {
    const copy = copyOf(hill, own, []);
    expect(copy).toMatchObject({ name: "Copy of Hill bike", answers: own.answers, copyOf: "own-1" });
    expect(copy.id).not.toBe(own.id);
    expect(copyOf({ ...hill, id: "own-2", copyOf: "own-1" }, own, []).copyOf).toBe("own-1");
  });

  test("of an invented find says so in name and tag, and survives being kept", () => {
    const copy = copyOf(PLUM, undefined, []);
    expect(copy.name).toBe("Copy of Plum hybrid (invented)");
    const held = new Map<string, string>();
    const store = {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, value: string) => void held.set(key, value),
    };
    openOwnFinds(shelf(store, "finds")).put(copy);
    const [again] = openOwnFinds(shelf(store, "finds")).all.value;
    expect(again).toEqual(copy);
    const find = asFind(copy, checks, 12, "");
    expect(find).toMatchObject({ invented: false, copyOf: PLUM.id, body: withGoal(PLUM.body, 12) });
    expect(ownership(find ?? hill)).toBe("copy of an invented find");
    expect([PLUM, find ?? hill, hill].map(isInvented)).toEqual([true, true, false]);
  });

  test("gets a name that is free, and short enough for the form", () => {
    expect(copyName(hill, ["Copy of Hill bike"])).toBe("Copy of Hill bike, 2");
    expect(copyName({ name: "Copy of Hill bike, 2", invented: false }, ["Copy of Hill bike"])).toBe(
      "Copy of Hill bike, 2",
    );
    expect(copyName(PLUM, ["Copy of Plum hybrid (invented)"])).toBe("Copy of Plum hybrid (invented), 2");
    expect(copyName({ name: "x".repeat(60), invented: true }, []).length).toBeLessThanOrEqual(60);
  });
});
