import { describe, expect, test } from "vitest";
import type { Observations } from "../../../dashboard/api/types.ts";
import type { Advice } from "../../../dashboard/spot/advice.ts";
import { observed, openLooks, readingAt, without } from "../../../dashboard/spot/observed.ts";
import { nextLook, queueOf } from "../../../dashboard/spot/order.ts";
import type { LookStep, Step } from "../../../dashboard/spot/trail.ts";
import { check } from "../fixtures/check.ts";

const CHECKS = [
  check({ id: "saddle", priority: "core" }),
  check({ id: "rust", priority: "triage" }),
  check({ id: "chain", where: "bench" }),
  check({ id: "tyre", perWheel: true, priority: "extra" }),
];
const advice = (order: readonly string[], worth: readonly string[] = order): Advice => ({
  order,
  worth,
  of: {},
  atHome: [],
  tests: [],
});
const step = (id: string, how: LookStep["how"], position: LookStep["position"] = null): Step => ({
  kind: "look",
  how,
  check: id,
  position,
});
const next = (said: Observations, trail: readonly Step[], told: Advice | null, anyway = false) =>
  nextLook(queueOf(CHECKS, said, trail, told), trail, anyway);

describe("the order of looks", () => {
  test("is the catalogue's without advice, the checks of the bench left out, front before rear", () => {
    const { open, worth } = queueOf(CHECKS, {}, [], null);
    expect(open).toEqual([
      { check: "rust", position: null },
      { check: "saddle", position: null },
      { check: "tyre", position: "front" },
      { check: "tyre", position: "rear" },
    ]);
    expect(worth).toEqual(open);
  });

  test("is the advice's, with what it does not name behind", () => {
    const { open, worth } = queueOf(CHECKS, {}, [], advice(["tyre", "saddle"], ["tyre"]));
    expect(open.map((look) => look.check)).toEqual(["tyre", "tyre", "saddle", "rust"]);
    expect(worth.map((look) => look.check)).toEqual(["tyre", "tyre"]);
  });

  test("asks the other wheel before anything that is worth more", () => {
    const trail = [step("tyre", "seen", "front")];
    const said = { tyre: { front: { level: "good" } } };
    expect(next(said, trail, advice(["rust", "tyre"]))).toEqual({ check: "tyre", position: "rear" });
    // Even where it pays no more: one wheel alone is half a look.
    expect(next(said, trail, advice(["rust"], ["rust"]))).toEqual({ check: "tyre", position: "rear" });
  });

  test("does not ask again what could not be told, and asks last what was put off, the longest waiting first", () => {
    const all = advice(["rust", "saddle", "tyre"]);
    expect(next({}, [step("rust", "cannot-tell")], all)?.check).toBe("saddle");
    const putOff = [
      step("rust", "later"),
      step("saddle", "later"),
      step("tyre", "later", "front"),
      step("tyre", "later", "rear"),
    ];
    expect(next({}, putOff, all)?.check).toBe("rust");
    expect(next({}, [...putOff, step("rust", "later")], all)?.check).toBe("saddle");
    expect(next({}, [...putOff, step("rust", "cannot-tell")], all)?.check).toBe("saddle");
  });

  test("does not ask again at once what was put off just now", () => {
    const one = advice(["rust", "saddle", "tyre"], ["rust"]);
    expect(next({}, [step("rust", "later")], one)).toBeNull();
    expect(next({}, [step("rust", "later"), step("saddle", "seen")], one)?.check).toBe("rust");
  });

  test("ends where nothing is worth its minute, unless the user looks on", () => {
    const enough = advice(["saddle", "rust", "tyre"], []);
    expect(next({}, [], enough)).toBeNull();
    expect(next({}, [], enough, true)?.check).toBe("saddle");
    expect(next({}, [step("saddle", "cannot-tell")], enough, true)?.check).toBe("rust");
    const all = { saddle: { level: "a" }, rust: { level: "a" }, tyre: { level: "a" } };
    expect(next(all, [], enough, true)).toBeNull();
  });

  test("never ends while something open is worth its minute, and never asks what was answered", () => {
    // Answering everything as it is asked ends, and asks each look once.
    let said: Observations = {};
    let trail: readonly Step[] = [];
    const asked: string[] = [];
    for (let look = next(said, trail, advice(["tyre", "rust", "saddle"])); look !== null; ) {
      asked.push(`${look.check} ${look.position}`);
      said = { ...said, [look.check]: observed(said[look.check], look, { level: "a" }, false) };
      trail = [...trail, step(look.check, "seen", look.position)];
      look = next(said, trail, advice(["tyre", "rust", "saddle"]));
    }
    expect(asked).toEqual(["tyre front", "tyre rear", "rust null", "saddle null"]);
  });
});

describe("what was seen at a wheel", () => {
  const rear = { check: "tyre", position: "rear" } as const;
  const front = { check: "tyre", position: "front" } as const;

  test("stands beside what was said of the other", () => {
    const one = observed(undefined, front, { level: "good" }, false);
    expect(one).toEqual({ front: { level: "good" } });
    const both = observed(one, rear, { level: "worn" }, false);
    expect(both).toEqual({ front: { level: "good" }, rear: { level: "worn" } });
    expect(readingAt(both, rear)).toEqual({ level: "worn" });
    expect(without(both, rear)).toEqual(one);
    expect(without(one, front)).toBeUndefined();
  });

  test("holds for both where they are alike, and one of them can still be told apart", () => {
    const alike = observed({ front: { level: "good" } }, front, { level: "worn" }, true);
    expect(alike).toEqual({ level: "worn" });
    expect(openLooks({ id: "tyre", perWheel: true }, alike)).toEqual([]);
    expect(observed(alike, rear, { level: "good" }, false)).toEqual({
      front: { level: "worn" },
      rear: { level: "good" },
    });
  });
});
