import { describe, expect, test } from "vitest";
import { sellingBody } from "../../../dashboard/selling/body.ts";
import { NOTHING_KEPT, openSellingTerms } from "../../../dashboard/selling/terms.ts";
import { shelf } from "../../../dashboard/state/shelf.ts";

function store(first?: string) {
  const kept = new Map<string, string>(first === undefined ? [] : [["place", first]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}
const open = (place = store(), known = ["a", "b"]) => openSellingTerms(shelf(place, "place"), () => known);

describe("terms of selling", () => {
  test("are kept, the seller's for all finds, the others for one, and come back", () => {
    const place = store();
    const terms = open(place);
    terms.putSeller("weeks", 6);
    terms.putBike("a", "state", "madeSafe");
    terms.putBike("a", "fallback", 40);
    terms.putBike("b", "arrivalsPerWeek", 2.5);
    terms.putAlone("category", "hybrid");
    const again = open(place).kept.value;
    expect(again).toEqual(terms.kept.value);
    expect(again).toEqual({
      seller: { weeks: 6 },
      bikes: { a: { state: "madeSafe", fallback: 40 }, b: { arrivalsPerWeek: 2.5 } },
      alone: { category: "hybrid" },
    });
  });

  test("of a find that was removed go with the next change", () => {
    const place = store();
    open(place).putBike("a", "fallback", 40);
    const terms = open(place, ["b"]);
    expect(terms.kept.value.bikes).toEqual({ a: { fallback: 40 } });
    terms.putBike("b", "fallback", 30);
    expect(terms.kept.value.bikes).toEqual({ b: { fallback: 30 } });
  });

  test("a term taken back is left out", () => {
    const terms = open();
    terms.putSeller("haggling", 0.1);
    terms.putSeller("haggling", undefined);
    expect(terms.kept.value.seller).toEqual({});
  });

  test("nonsense in the store is as nothing", () => {
    for (const text of ["{", "7", '{"seller":{"weeks":"x"},"bikes":{"a":{"state":"polished"}},"alone":[1]}'])
      expect({ ...open(store(text)).kept.value, bikes: {} }).toEqual(NOTHING_KEPT);
    const polished = '{"bikes":{"a":{"state":"polished","fallback":40}}}';
    expect(open(store(polished)).kept.value.bikes).toEqual({ a: { fallback: 40 } });
  });
});

describe("the question", () => {
  const appraised = {
    find: { category: "hybrid", era: "2010s", frameMaterial: "steel", componentTier: "mid" },
    observations: { chain: { level: "ok" } },
    workshop: { hourlyGoal: 12, month: 4 },
  } as const;

  test("is the appraised find in its state; what nobody set is left out", () => {
    const body = sellingBody(appraised, "asFound", { seller: {}, bike: {} }, null);
    expect(body).toEqual({ ...appraised, state: "asFound" });
  });

  test("carries the terms and the offer; the seller's month goes before the find's", () => {
    const seller = { weeks: 6, storagePerWeek: 0, haggling: 0, month: 9 };
    const bike = { state: "asFound", arrivalsPerWeek: 2, fallback: 30 } as const;
    const body = sellingBody(appraised, "restored", { seller, bike }, { amount: 70, week: 2 });
    const { month, ...rest } = seller;
    expect(body.market).toEqual({ ...rest, arrivalsPerWeek: 2, fallback: 30 });
    expect(body.workshop).toEqual({ hourlyGoal: 12, month });
    expect(body.offer).toEqual({ amount: 70, week: 2 });
    expect(body.state).toBe("restored");
  });
});
