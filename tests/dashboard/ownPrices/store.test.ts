import { describe, expect, test } from "vitest";
import { withOwnPrices } from "../../../dashboard/answers/body.ts";
import type { AppraisalBody } from "../../../dashboard/api/types.ts";
import { comparablesFor, partPricesOf } from "../../../dashboard/ownPrices/comparables.ts";
import { daysBetween, isoDay, localDay } from "../../../dashboard/ownPrices/days.ts";
import { saleOf } from "../../../dashboard/ownPrices/draft.ts";
import { newestFirst } from "../../../dashboard/ownPrices/newest.ts";
import type { KeptSale, Sale } from "../../../dashboard/ownPrices/sale.ts";
import { openOwnPrices } from "../../../dashboard/ownPrices/store.ts";
import { take } from "../../../dashboard/ownPrices/take.ts";
import { type Store, shelf } from "../../../dashboard/state/shelf.ts";
import { TODAY, VOCABULARY } from "./vocabulary.ts";

function storeWith(kept: Record<string, string> = {}): Store {
  const held = new Map(Object.entries(kept));
  return { getItem: (key) => held.get(key) ?? null, setItem: (key, value) => void held.set(key, value) };
}
const opened = (store: Store | null = storeWith()) => openOwnPrices(shelf(store, "prices"));

const sale: Sale = { price: 120, currency: "EUR", kind: "paid", date: "2026-05-31", category: "hybrid" };
const other: Sale = { ...sale, price: 80, date: "2026-06-01" };
const chain = { part: "chain", price: 9, currency: "EUR" };

describe("own sales and prices in the browser", () => {
  test("are there again when the page is opened anew", () => {
    const store = storeWith();
    const first = opened(store);
    first.addSales([sale, other]);
    first.putPartPrices([chain]);
    first.setSameModel("sale-2", ["plum-hybrid"]);
    const again = opened(store);
    expect(again.sales.value).toEqual([
      { ...sale, id: "sale-1" },
      { ...other, id: "sale-2", sameModelAs: ["plum-hybrid"] },
    ]);
    expect(again.partPrices.value).toEqual([chain]);
    expect(again.trouble.value).toBeNull();
  });

  test("are not kept twice, whichever finds they are like, and never share an id", () => {
    const own = opened();
    expect(own.addSales([sale, other])).toEqual({ added: 2, already: 0, over: 0 });
    own.setSameModel("sale-1", ["plum-hybrid"]);
    expect(
      own.addSales([
        { ...sale, sameModelAs: ["x"] },
        { ...sale, price: 1 },
      ]),
    ).toEqual({
      added: 1,
      already: 1,
      over: 0,
    });
    own.removeSale("sale-1");
    own.addSales([{ ...sale, price: 2 }]);
    expect(own.sales.value.map(({ id }) => id)).toEqual(["sale-2", "sale-3", "sale-4"]);
  });

  test("are 5,000 at most", () => {
    const own = opened();
    const many = Array.from({ length: 5002 }, (_, i) => ({ ...sale, price: i + 1 }));
    expect(own.addSales(many.slice(0, 4999))).toMatchObject({ added: 4999, over: 0 });
    expect(own.addSales(many)).toEqual({ added: 1, already: 4999, over: 2 });
    expect(own.sales.value).toHaveLength(5000);
  });

  test("replace a part's price, and lose it by id", () => {
    const own = opened();
    own.putPartPrices([chain, { ...chain, part: "tube", price: 3 }]);
    own.putPartPrices([{ ...chain, price: 11 }]);
    expect(own.partPrices.value.map(({ part, price }) => [part, price])).toEqual([
      ["chain", 11],
      ["tube", 3],
    ]);
    own.removePartPrice("chain");
    expect(own.partPrices.value.map(({ part }) => part)).toEqual(["tube"]);
  });

  test("come back after a removal, until something else changes", () => {
    const store = storeWith();
    const own = opened(store);
    own.addSales([sale, other]);
    own.putPartPrices([chain]);
    own.removeAll();
    expect([own.sales.value, own.partPrices.value]).toEqual([[], []]);
    own.undo();
    expect(own.sales.value).toHaveLength(2);
    expect(opened(store).partPrices.value).toEqual([chain]);
    expect(own.removed.value).toBeNull();
    own.removeSale("sale-1");
    own.addSales([{ ...sale, price: 5 }]);
    own.undo();
    expect(own.sales.value.map(({ price }) => price)).toEqual([80, 5]);
  });

  test.each(["{oops", "null", "[]", '{"version":9,"sales":[],"partPrices":[]}', '{"version":1,"sales":3}'])(
    "that cannot be read (%s) start afresh, and say so, until the next change",
    (text) => {
      const own = opened(storeWith({ prices: text }));
      expect(own.sales.value).toEqual([]);
      expect(own.trouble.value).toBe("unreadable");
      own.addSales([sale]);
      expect(own.trouble.value).toBeNull();
    },
  );

  test("that are damaged one by one are left out one by one, and odd attributes with them", () => {
    const kept = { ...sale, id: "sale-1" };
    const sales = [
      { ...kept, condition: 7, name: 3, year: "x" },
      { ...kept, id: "" },
      { ...kept, price: 0 },
      { ...kept, date: "2026-13-01" },
      { ...kept, kind: "guessed" },
      null,
    ];
    const text = JSON.stringify({ version: 1, sales, partPrices: [chain, { part: "tube" }, 7] });
    const own = opened(storeWith({ prices: text }));
    expect(own.sales.value).toEqual([kept]);
    expect(own.partPrices.value).toEqual([chain]);
  });

  test("work without a browser that keeps them, which is said", () => {
    const own = opened(null);
    own.addSales([sale]);
    expect(own.sales.value).toHaveLength(1);
    expect(own.trouble.value).toBe("not-kept");
  });

  test("stand newest first, those of a day the last added first", () => {
    const kept = (id: string, date: string): KeptSale => ({ ...sale, id, date });
    const order = [kept("a", "2026-01-01"), kept("b", "2026-05-01"), kept("c", "2026-01-01")];
    expect(newestFirst(order).map(({ id }) => id)).toEqual(["b", "c", "a"]);
  });
});

describe("a question to the API", () => {
  const kept: KeptSale = {
    ...sale,
    id: "sale-1",
    name: "Hill bike",
    era: "1980s",
    year: 1985,
    stepThrough: "no",
    state: "rides",
    condition: 0.75,
    sameModelAs: ["plum-hybrid"],
  };

  test("takes a sale as a comparable: its age and month from its day, the year before the era, the unknown left out", () => {
    expect(comparablesFor([kept], ["plum-hybrid"], VOCABULARY, "2026-06-15", "EUR")).toEqual([
      {
        id: "sale-1",
        price: 120,
        currency: "EUR",
        kind: "paid",
        ageDays: 15,
        month: 5,
        likeThis: true,
        category: "hybrid",
        year: 1985,
        stepThrough: "no",
        state: "rides",
        condition: 0.75,
      },
    ]);
    const [ofCopy] = comparablesFor(
      [{ ...kept, sameModelAs: ["x"] }],
      ["own-copy", "x"],
      VOCABULARY,
      TODAY,
      "EUR",
    );
    expect(ofCopy).toHaveProperty("likeThis", true);
    const [plain] = comparablesFor(
      [{ ...kept, sameModelAs: ["x"] }],
      ["plum-hybrid"],
      VOCABULARY,
      TODAY,
      "EUR",
    );
    expect(plain).not.toHaveProperty("likeThis");
  });

  test("leaves out other currencies and words that the catalogue no longer holds; no sale is of tomorrow", () => {
    const odd = [
      { ...kept, currency: "GBP" },
      { ...kept, category: "unicycle", state: "flies", date: "2026-06-20" },
    ];
    const [one, ...more] = comparablesFor(odd, ["x"], VOCABULARY, "2026-06-15", "EUR");
    expect(more).toEqual([]);
    expect(one).not.toHaveProperty("category");
    expect(one).not.toHaveProperty("state");
    expect(one?.ageDays).toBe(0);
  });

  test("carries the prices of parts, and is the same question without any", () => {
    const book = [chain, { ...chain, part: "tube", currency: "GBP" }, { ...chain, part: "gone" }];
    const partPrices = partPricesOf(book, VOCABULARY, "EUR");
    expect(partPrices).toEqual({ chain: 9 });
    const body = { find: {}, workshop: { month: 4 } } as AppraisalBody;
    expect(withOwnPrices(body, { partPrices, comparables: [] }).workshop).toEqual({
      month: 4,
      partPrices: { chain: 9 },
    });
    expect(withOwnPrices(body, { partPrices: {}, comparables: [] })).toBe(body);
  });

  test("carries the sales beside the find, the newest 5,000 at most, newest first", () => {
    const many = Array.from({ length: 5002 }, (_, i) => ({
      ...kept,
      id: `sale-${i}`,
      date: i < 2 ? "2020-01-01" : "2026-05-01",
    }));
    const sent = comparablesFor(many, ["x"], VOCABULARY, "2026-06-15", "EUR");
    expect(sent).toHaveLength(5000);
    expect(new Set(sent.map(({ id }) => id)).size).toBe(5000);
    expect(sent.some(({ id }) => id === "sale-0" || id === "sale-1")).toBe(false);
    const body = { find: {} } as AppraisalBody;
    const asked = withOwnPrices(body, { partPrices: {}, comparables: sent.slice(0, 1) });
    expect(asked.comparables).toEqual(sent.slice(0, 1));
    expect(asked.workshop).toBeUndefined();
  });

  test("gives no condition of a bicycle that does not ride, which the API refuses", () => {
    const [broken] = comparablesFor([{ ...kept, state: "does-not-ride" }], ["x"], VOCABULARY, TODAY, "EUR");
    expect(broken).toMatchObject({ state: "does-not-ride" });
    expect(broken).not.toHaveProperty("condition");
  });
});

describe("a file taken in", () => {
  const HEAD = "price,currency,kind,date\n";
  const taken = (text: string, own = opened()) => ({ own, told: take(text, own, VOCABULARY, TODAY, "EUR") });

  test("keeps its good rows, and says what came of the others", () => {
    const good = "120,EUR,paid,2026-05-31\n";
    const { own, told } = taken(`${HEAD}${good}0,EUR,paid,2026-05-31\n${good}`);
    expect(told.said).toBe("1 sale added; 1 row not kept; 1 row said twice and kept once.");
    expect(told.twice).toEqual(["Line 4 says the same as line 2."]);
    expect(told.rejectedCsv).toContain("price: ");
    expect(own.sales.value).toHaveLength(1);
    expect(taken(`${HEAD}${good}`, own).told.said).toBe("No sale added; 1 row kept before.");
  });

  test("with a faulty header changes nothing", () => {
    const { own, told } = taken("prise,currency,kind,date\n1,EUR,paid,2026-05-31\n");
    expect(told).toMatchObject({ said: "The file was not read.", rejected: 0, rejectedCsv: null });
    expect(told.faults.length).toBeGreaterThan(0);
    expect(own.sales.value).toEqual([]);
  });

  test("may be a price book", () => {
    const { own, told } = taken("part,price,currency\nchain,9,EUR\n");
    expect(told.said).toBe("1 price added.");
    expect(own.partPrices.value).toEqual([chain]);
  });
});

describe("a sale by hand", () => {
  const of = (draft: Record<string, string>) => saleOf(draft, VOCABULARY, TODAY, "EUR");

  test("needs price, kind and day alone", () => {
    expect(of({ price: "120", kind: "paid", date: "2026-05-31", category: "hybrid", name: " " })).toEqual({
      sale,
    });
  });

  test("is refused field by field", () => {
    expect(of({ price: "0", date: "2027-01-01" })).toMatchObject({
      wrong: {
        price: expect.stringMatching(/no price/),
        kind: "Fill this in.",
        date: expect.stringMatching(/still to come/),
      },
    });
  });
});

describe("days", () => {
  test("are counted over leap years and daylight saving", () => {
    expect(daysBetween("2024-02-28", "2024-03-01")).toBe(2);
    expect(daysBetween("2026-01-01", "2026-12-31")).toBe(364);
    expect(daysBetween("2026-06-02", "2026-06-01")).toBe(-1);
  });

  test("exist or not", () => {
    expect(["2024-02-29", "1999-12-31"].every(isoDay)).toBe(true);
    expect(["2023-02-29", "2026-00-01", "2026-1-1", "today", ""].some(isoDay)).toBe(false);
  });

  test("are those of the user's own clock", () => {
    expect(localDay(new Date(2026, 0, 5, 23, 59))).toBe("2026-01-05");
  });
});
