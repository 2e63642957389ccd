import { describe, expect, test } from "vitest";
import type { ComparisonAnswer } from "../../../dashboard/api/types.ts";
import { recordsIn } from "../../../dashboard/ownPrices/records.ts";
import { FIRST_TERMS } from "../../../dashboard/state/setTerms.ts";
import { calledAmong } from "../../../dashboard/together/called.ts";
import { costSpread, hoursSpread, meritBlocks, pricedRows } from "../../../dashboard/together/charts.ts";
import { reaches } from "../../../dashboard/together/reaches.ts";
import { setCsv } from "../../../dashboard/together/setCsv.ts";
import { closed, open } from "../fixtures/appraisal.ts";
import { answer, compared, find, stood, TOTAL, WORK } from "./answer.ts";

const FINDS = [compared("a", WORK(90, 4.5)), compared("b", WORK(120, 8, 300)), compared("c", WORK(-12, 2))];

describe("the rows of an answer", () => {
  test("stand by margin per hour, chosen or not, numbered through", () => {
    const { rows } = stood(answer([compared("d", WORK(30, 2.3)), ...FINDS], ["d"]));
    expect(rows.map(({ find, number, chosen }) => [find.id, number, chosen])).toEqual([
      ["a", 1, false],
      ["b", 2, false],
      ["d", 3, true],
      ["c", 4, false],
    ]);
  });

  test("those left tell whether they pay and what they lack", () => {
    const { rows } = stood(answer(FINDS, ["a"]));
    expect(rows.map(({ pays }) => pays)).toEqual([true, true, false]);
    expect(rows[0]?.needs).toBeNull();
    expect(rows[1]?.needs?.hours).toBeCloseTo(6.82 + 8 - 8);
    expect(rows[1]?.needs?.cash).toBeCloseTo(85.53 + 300 - 150);
    expect(rows[1]?.needs?.slots).toBe(1);
  });

  test("no find is dropped in silence: stopped, left, without an open course, or refused", () => {
    const stopped = {
      ...compared("s", WORK(1, 1)),
      courses: [],
      decision: { course: "leave", stop: "serial" },
    };
    const shut = { ...compared("o", WORK(1, 1)), courses: [closed("restore"), open("leave", 0, 0)] };
    const held = compared("l", WORK(1, 1));
    const refused = {
      id: "r",
      problem: {
        type: "",
        title: "",
        status: 422,
        detail: "d",
        errors: [{ pointer: "/finds/4/find/purchase/price", message: "wrong" }],
      },
    };
    const all = [FINDS[0]!, stopped, shut, held, refused] as unknown as ComparisonAnswer["finds"];
    const given = answer(all, ["a"]);
    const { rows, outside } = stood(
      { ...given, meritOrder: given.meritOrder.filter(({ id }) => id === "a") },
      all.map(({ id }) => find(id)),
      { l: "leave" },
    );
    expect(rows).toHaveLength(1);
    expect(outside.map(({ find, kind, faults }) => [find.id, kind, ...faults])).toEqual([
      ["s", "stopped"],
      ["o", "only-leaving"],
      ["l", "left"],
      ["r", "problem", { pointer: "/find/purchase/price", message: "wrong" }],
    ]);
  });

  test("a find that is gone since is passed over", () => {
    expect(stood(answer(FINDS, []), [find("a")]).rows.map(({ find }) => find.id)).toEqual(["a"]);
  });
});

describe("the set as a file", () => {
  const row = (text: string, i: number) => recordsIn(text).records[i]?.cells ?? [];

  test("has a row for each find and one for the whole set, figures with their units", () => {
    const csv = setCsv(stood(answer(FINDS, ["a"]), [find("a", { invented: true }), find("b"), find("c")]));
    const { records } = recordsIn(csv);
    expect(records).toHaveLength(5);
    const cell = (i: number, name: string) => row(csv, i)[row(csv, 0).indexOf(name)];
    expect(cell(1, "find")).toBe("Bike a");
    expect(cell(1, "invented")).toBe("yes");
    expect(cell(2, "invented")).toBe("no");
    expect(cell(1, "chosen")).toBe("yes");
    expect(cell(1, "margin per hour (EUR/h)")).toBe("20");
    expect(cell(3, "margin (EUR)")).toBe("-12");
    expect(cell(4, "your hours (h)")).toBe(String(TOTAL.hours));
    expect(cell(4, "cash in it (EUR)")).toBe(String(TOTAL.cash));
  });

  test("holds no name that a spreadsheet would run", () => {
    const csv = setCsv(stood(answer([FINDS[0]!], ["a"]), [find("a", { name: "=1+1" })]));
    expect(csv).toContain("\r\n'=1+1,");
  });
});

describe("what the charts are told", () => {
  const standing = stood(answer(FINDS, ["a"]));

  test("blocks as wide as their hours and as high as their rate", () => {
    const { blocks, goal, hours } = meritBlocks(standing);
    expect(blocks.map(({ hours, rate, chosen }) => [hours, rate, chosen])).toEqual([
      [4.5, 20, true],
      [8, 15, false],
      [2, -6, false],
    ]);
    expect([goal, hours]).toEqual([12, 8]);
  });

  test("rays of nought, the goal and twice the goal; without a goal just its own", () => {
    expect(hoursSpread(standing).rays.map(({ slope }) => slope)).toEqual([0, 12, 24]);
    expect(hoursSpread({ ...standing, goal: 0 }).rays.map(({ slope }) => slope)).toEqual([0]);
    expect(hoursSpread(standing).points.map(({ hatched }) => hatched)).toEqual([false, false, true]);
  });

  test("a price in the state the course sells in; no point where that state has none", () => {
    const restored = compared("d", open("restore", 50, 5, { cashNeeded: 40 }));
    const priced = pricedRows(stood(answer([...FINDS, restored], [])).rows);
    expect(priced.map(({ row }) => row.find.id)).toEqual(["a", "b", "c"]);
    const { points } = costSpread(priced);
    expect(points.map(({ x, y }) => [x.at, y.at])).toEqual([
      [20, 100],
      [300, 100],
      [20, 100],
    ]);
    expect(points.map(({ hatched }) => hatched)).toEqual([false, true, false]);
  });
});

test("the sliders reach to what all finds together would use, and to what was typed", () => {
  expect(reaches(answer(FINDS, []), FIRST_TERMS)).toEqual({ hours: 16, cash: 350, slots: 4 });
  expect(reaches(null, FIRST_TERMS)).toEqual({ hours: 16, cash: 300, slots: 4 });
  const typed = { ...FIRST_TERMS, hours: { amount: 99.5, limited: true } };
  expect(reaches(answer(FINDS, []), typed).hours).toBe(100);
});

test("a find without a name is called by its kind", () => {
  expect(calledAmong(find("a", { name: "Hybrid, 1990s", called: "it" }))).toBe("the hybrid, 1990s");
  expect(calledAmong(find("a"))).toBe("bike a");
});
