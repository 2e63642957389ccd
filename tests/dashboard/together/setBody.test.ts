import { describe, expect, test } from "vitest";
import type { ComparisonAnswer } from "../../../dashboard/api/types.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { setBody } from "../../../dashboard/together/setBody.ts";
import { createApp } from "../../../worker/api/app.ts";
import { readCatalogue } from "../../../worker/tables.ts";
import { find } from "./answer.ts";

const WISH = {
  hourlyGoal: 12,
  budgets: { hours: 8, cash: 150, slots: null },
  objective: "margin",
  courses: {},
} as const;
const sale = (id: string, more: object = {}) => ({ id, price: 90, kind: "paid", ageDays: 3, ...more });
const selling = (id: string, comparables: readonly object[], workshop: object = {}) => {
  const plain = find(id);
  return { ...plain, body: { ...plain.body, comparables, workshop } as typeof plain.body };
};

describe("the question which to take together", () => {
  test("holds every find under its own id, with its observations and the course it is held to", () => {
    const observed = {
      ...find("a"),
      body: { ...find("a").body, observations: { chain: { level: "worn" } } },
    };
    const { body } = setBody([observed, find("b")], { ...WISH, courses: { b: "leave", gone: "restore" } });
    expect(body.finds.map((one) => [one.find.id, one.course])).toEqual([
      ["a", null],
      ["b", "leave"],
    ]);
    expect(body.finds[0]?.observations).toEqual({ chain: { level: "worn" } });
    expect(body.budgets).toEqual({ hours: 8, cash: 150, slots: null });
    expect(body.objective).toBe("margin");
    expect(body.workshop).toEqual({ hourlyGoal: 12 });
  });

  test("takes the goal and the prices of parts once, and each find's own month of sale", () => {
    const workshop = { hourlyGoal: 99, month: 5, partPrices: { chain: 9 } };
    const { body } = setBody(
      [selling("a", [], workshop), selling("b", [], { partPrices: { chain: 9 } })],
      WISH,
    );
    expect(body.workshop).toEqual({ hourlyGoal: 12, partPrices: { chain: 9 } });
    expect(body.finds.map(({ month }) => month)).toEqual([5, undefined]);
  });

  test("sends a sale that is alike for all once, and one that is like a find with that find", () => {
    const finds = [
      selling("a", [sale("1"), sale("2", { likeThis: true })]),
      selling("b", [sale("1"), sale("2")]),
    ];
    const { body, pricesLeft } = setBody(finds, WISH);
    expect(body.comparables).toEqual([sale("1")]);
    expect(body.finds.map((one) => one.comparables)).toEqual([[sale("2", { likeThis: true })], [sale("2")]]);
    expect(pricesLeft).toBe(0);
  });

  test("leaves the oldest sales where there are more than the API reads at once", () => {
    const many = Array.from({ length: 5000 }, (_, i) => sale(String(i)));
    const finds = ["a", "b", "c", "d", "e"].map((id) => selling(id, many));
    const { body, pricesLeft } = setBody(finds, WISH);
    expect(body.comparables).toHaveLength(4000);
    expect(body.comparables?.at(-1)?.id).toBe("3999");
    expect(pricesLeft).toBe(1000);
  });

  test("of the invented finds is one that the API answers, no find refused", async () => {
    const app = createApp({ version: "0", readCatalogue });
    const response = await app.request("/v1/comparisons", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(setBody(DEMO_FINDS, WISH).body),
    });
    expect(response.status).toBe(200);
    const { finds } = (await response.json()) as ComparisonAnswer;
    expect(finds.map(({ id }) => id)).toEqual(DEMO_FINDS.map(({ id }) => id));
    expect(finds.filter((one) => "problem" in one)).toEqual([]);
  });
});
