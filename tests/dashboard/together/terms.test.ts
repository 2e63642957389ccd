import { describe, expect, test } from "vitest";
import { budgetsOf, FIRST_TERMS, isAmount, openSetTerms } from "../../../dashboard/state/setTerms.ts";
import { shelf } from "../../../dashboard/state/shelf.ts";

function storeWith(text?: string) {
  const held = new Map(text === undefined ? [] : [["set", text]]);
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
  };
}
const termsIn = (text?: string) => openSetTerms(shelf(storeWith(text), "set")).terms.value;

describe("what there is", () => {
  test("is as at first where nothing was kept, or nonsense", () => {
    expect(termsIn()).toEqual(FIRST_TERMS);
    expect(termsIn("no json")).toEqual(FIRST_TERMS);
    expect(termsIn("[1]")).toEqual(FIRST_TERMS);
    const odd = {
      hours: { amount: -1, limited: true },
      slots: { amount: 1.5, limited: true },
      objective: "luck",
      courses: { a: "polish", b: 3 },
    };
    expect(termsIn(JSON.stringify(odd))).toEqual(FIRST_TERMS);
  });

  test("is there again when the page is opened anew", () => {
    const place = shelf(storeWith(), "set");
    openSetTerms(place).put({ hours: { amount: 12.5, limited: false }, courses: { a: "leave" } });
    const again = openSetTerms(place).terms.value;
    expect(again).toEqual({
      ...FIRST_TERMS,
      hours: { amount: 12.5, limited: false },
      courses: { a: "leave" },
    });
    expect(budgetsOf(again)).toEqual({ hours: null, cash: 150, slots: 2 });
  });

  test("takes no half place, nothing below nought and nothing the API would refuse", () => {
    expect(isAmount("slots", 1.5)).toBe(false);
    expect(isAmount("hours", 1.5)).toBe(true);
    expect(isAmount("hours", 10_001)).toBe(false);
    expect(isAmount("cash", Number.NaN)).toBe(false);
    expect(isAmount("cash", undefined)).toBe(false);
  });
});
