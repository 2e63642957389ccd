import { describe, expect, test } from "vitest";
import { NO_ANSWERS } from "../../../dashboard/answers/answers.ts";
import { asFind, newOwnFind, openOwnFinds } from "../../../dashboard/finds/own.ts";
import { isGoal, keptGoal } from "../../../dashboard/state/goal.ts";
import { routeOf } from "../../../dashboard/state/route.ts";
import { type Store, shelf } from "../../../dashboard/state/shelf.ts";

function storeWith(kept: Record<string, string> = {}): Store {
  const held = new Map(Object.entries(kept));
  return {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, value),
  };
}

const FULL: Store = {
  getItem: () => null,
  setItem: () => {
    throw new DOMException("full", "QuotaExceededError");
  },
};

const FOUR = { category: "hybrid", era: "1990s", frameMaterial: "steel", componentTier: "mid" };
const own = { id: "own-1", name: "Hill bike", answers: { ...NO_ANSWERS, attributes: FOUR } };

describe("own finds in the browser", () => {
  test("are there again when the page is opened anew", () => {
    const store = storeWith();
    openOwnFinds(shelf(store, "finds")).put(own);
    const again = openOwnFinds(shelf(store, "finds"));
    expect(again.all.value).toEqual([own]);
    expect(again.trouble.value).toBeNull();
  });

  test("are changed in place and removed by id", () => {
    const finds = openOwnFinds(shelf(storeWith(), "finds"));
    finds.put(own);
    finds.put({ ...own, id: "own-2" });
    finds.put({ ...own, name: "Other" });
    expect(finds.all.value.map(({ id, name }) => [id, name])).toEqual([
      ["own-1", "Other"],
      ["own-2", "Hill bike"],
    ]);
    finds.remove("own-1");
    expect(finds.get("own-1")).toBeUndefined();
    expect(finds.all.value).toHaveLength(1);
  });

  test.each(["{oops", "null", "[]", '{"version":9,"finds":[]}', '{"version":1,"finds":3}'])(
    "that cannot be read (%s) start afresh, and say so",
    (text) => {
      const finds = openOwnFinds(shelf(storeWith({ finds: text }), "finds"));
      expect(finds.all.value).toEqual([]);
      expect(finds.trouble.value).toBe("unreadable");
      finds.put(own);
      expect(finds.all.value).toEqual([own]);
      expect(finds.trouble.value).toBeNull();
    },
  );

  test("that are damaged one by one are left out one by one", () => {
    const text = JSON.stringify({ version: 1, finds: [own, 7, { id: "" }, { id: "own-3" }] });
    const finds = openOwnFinds(shelf(storeWith({ finds: text }), "finds"));
    expect(finds.all.value.map(({ id }) => id)).toEqual(["own-1", "own-3"]);
  });

  test("work without a browser that keeps them, which is said", () => {
    for (const store of [null, FULL]) {
      const finds = openOwnFinds(shelf(store, "finds"));
      finds.put(own);
      expect(finds.all.value).toEqual([own]);
      expect(finds.trouble.value).toBe("not-kept");
    }
  });

  test("join the chart once the four picks are made, under their name or what they are", () => {
    expect(asFind({ ...own, answers: NO_ANSWERS }, [], 12, "A find")).toBeNull();
    expect(asFind(own, [], 12, "Hybrid, 1990s")).toMatchObject({
      name: "Hill bike",
      called: "Hill bike",
      invented: false,
    });
    expect(asFind({ ...own, name: " " }, [], 12, "Hybrid, 1990s")).toMatchObject({
      name: "Hybrid, 1990s",
      called: "it",
    });
  });

  test("each get an id of their own", () => {
    expect(new Set(Array.from({ length: 50 }, () => newOwnFind().id)).size).toBe(50);
  });
});

describe("the goal", () => {
  test("is kept where it is a goal, and otherwise left to the catalogue", () => {
    expect(keptGoal(shelf(storeWith({ goal: "15.5" }), "goal"))).toBe(15.5);
    for (const text of ['"15"', "-1", "null", "{", "1e9"]) {
      expect(keptGoal(shelf(storeWith({ goal: text }), "goal"))).toBeNull();
    }
  });

  test("may be nought but no nonsense", () => {
    expect([0, 12.5, 500].every(isGoal)).toBe(true);
    expect([-1, Number.NaN, 501, "12", undefined].some(isGoal)).toBe(false);
  });
});

describe("the address", () => {
  test.each([
    ["/", { page: "finds" }],
    ["/finds", { page: "finds" }],
    ["/finds/plum-hybrid", { page: "find", id: "plum-hybrid" }],
    ["/finds/a%20b/", { page: "find", id: "a b" }],
    ["/finds/%E0%A4%A", { page: "find", id: "%E0%A4%A" }],
    ["/describe", { page: "describe", id: null }],
    ["/describe/own-1", { page: "describe", id: "own-1" }],
    ["/spot", { page: "spot", id: null }],
    ["/spot/own-1", { page: "spot", id: "own-1" }],
    ["/spot/own-1/x", { page: "nowhere" }],
    ["/prices", { page: "prices" }],
    ["/prices/x", { page: "nowhere" }],
    ["/compare", { page: "compare" }],
    ["/compare/x", { page: "nowhere" }],
    ["/selling", { page: "selling", id: null }],
    ["/selling/plum-hybrid", { page: "selling", id: "plum-hybrid" }],
    ["/selling/a/b", { page: "nowhere" }],
    ["/nowhere", { page: "nowhere" }],
    ["/finds/plum-hybrid/listing", { page: "listing", id: "plum-hybrid" }],
    ["/finds/a%20b/listing/", { page: "listing", id: "a b" }],
    ["/finds/a/listing/b", { page: "nowhere" }],
    ["/finds/a/b", { page: "nowhere" }],
  ])("%s leads to its page", (path, route) => {
    expect(routeOf(path)).toEqual(route);
  });
});
