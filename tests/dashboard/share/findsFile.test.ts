import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NO_ANSWERS } from "../../../dashboard/answers/answers.ts";
import type { OwnFind } from "../../../dashboard/finds/own.ts";
import { findsToJson, type ReadFind, readFinds } from "../../../dashboard/share/findsFile.ts";
import { takenFinds } from "../../../dashboard/share/takeFinds.ts";

const DAY = "2026-11-26";
const find = (id: string, name: string, price?: number): OwnFind => ({
  id,
  name,
  answers: { ...NO_ANSWERS, ...(price === undefined ? {} : { price }) },
});
const HILL: OwnFind = {
  ...find("own-1", "Hill bike", 25),
  copyOf: "plum-hybrid",
  answers: {
    attributes: { category: "hybrid" },
    observations: { chain: { measured: { length24: 307.6 } }, tyre: { front: { level: "good" } } },
    price: 25,
    paid: true,
    month: 5,
    soFar: { money: 3, minutes: 20, done: ["wash"], bought: [{ part: "chain", quantity: 1, reuseValue: 2 }] },
  },
};

function read(text: string): readonly (ReadFind | null)[] {
  const file = readFinds(text);
  if ("wrong" in file) throw new Error(file.wrong);
  return file.entries;
}

describe("a file of finds", () => {
  test("holds them whole", () => {
    expect(read(findsToJson([HILL, find("own-2", "")], DAY))).toEqual([
      { find: HILL, lost: [] },
      { find: find("own-2", ""), lost: [] },
    ]);
  });

  test.for([
    ["", "no-json"],
    ["{", "no-json"],
    ["[]", "foreign"],
    ['{"format":"something","version":1,"finds":[]}', "foreign"],
    ['{"format":"spokeworth-finds","version":1}', "foreign"],
    ['{"format":"spokeworth-finds","version":2,"finds":[]}', "newer"],
  ] as const)("%s is %s", ([text, wrong]) => {
    expect(readFinds(text)).toEqual({ wrong });
  });

  test("tells entry by entry what it could not read, and takes the rest", () => {
    const text = JSON.stringify({
      format: "spokeworth-finds",
      version: 1,
      finds: [
        {
          id: "own-1",
          name: "Hill",
          mood: "good",
          answers: { price: "cheap", attributes: { era: "1980s" } },
        },
        { name: "no id" },
        7,
      ],
    });
    expect(read(text)).toEqual([
      {
        find: { id: "own-1", name: "Hill", answers: { attributes: { era: "1980s" }, observations: {} } },
        lost: ["mood", "answers/price"],
      },
      null,
      null,
    ]);
  });
});

describe("finds taken from a file", () => {
  const entries = (...finds: readonly OwnFind[]) => finds.map((one) => ({ find: one, lost: [] }));

  test("are new, here already, or beside the one that they differ from", () => {
    const taken = takenFinds(entries(find("a", "A", 1), find("b", "B", 1), find("c", "C")), [
      find("a", "A", 1),
      find("b", "B", 2),
    ]);
    expect(taken.map(({ as }) => as)).toEqual(["same", "beside", "new"]);
    expect(taken[1]!.find).toMatchObject({ name: "B (from a file)", answers: { price: 1 } });
    expect(taken[1]!.find.id).not.toBe("b");
  });

  test("are here already under whatever id", () => {
    expect(takenFinds(entries(find("x", "A", 1)), [find("a", "A", 1)])[0]!.as).toBe("same");
  });

  test("get an id of their own where theirs is an invented find's", () => {
    const [taken] = takenFinds(entries(find("plum-hybrid", "A", 1)), []);
    expect(taken).toMatchObject({ as: "new", find: { name: "A", answers: { price: 1 } } });
    expect(taken!.find.id).not.toBe("plum-hybrid");
  });

  test("overwrite nothing, lose nothing, and add nothing the second time", () => {
    const some = fc.array(
      fc
        .record({ id: fc.constantFrom("a", "b", "c"), name: fc.constantFrom("", "N", "M"), price: fc.nat(2) })
        .map(({ id, name, price }) => find(id, name, price)),
      { maxLength: 6 },
    );
    const distinct = some.map((finds) => [...new Map(finds.map((one) => [one.id, one])).values()]);
    const says = ({ name, answers }: OwnFind) =>
      `${name.replace(/ ?\(from a file\)$/, "")} ${JSON.stringify(answers)}`;
    fc.assert(
      fc.property(distinct, some, (kept, file) => {
        const added = takenFinds(entries(...file), kept).flatMap((one) =>
          one.as === "same" ? [] : [one.find],
        );
        const after = [...kept, ...added];
        expect(new Set(after.map(({ id }) => id)).size).toBe(after.length);
        const there = new Set(after.map(says));
        for (const one of file) expect(there).toContain(says(one));
        expect(takenFinds(entries(...file), after).every(({ as }) => as === "same")).toBe(true);
      }),
    );
  });
});
