import { describe, expect, test } from "vitest";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import type { OwnFind } from "../../../dashboard/finds/own.ts";
import { fingerprint, fnv1a } from "../../../dashboard/share/fingerprint.ts";
import { leftOut, notKnown } from "../../../dashboard/share/leftOut.ts";
import { keptAlready, ownFrom, sharedFind } from "../../../dashboard/share/sharedFind.ts";
import { referenceOf } from "../fixtures/service.ts";

const plum = sharedFind(DEMO_FINDS[0]!, undefined);

describe("the mark of contents", () => {
  // Test vectors of the authors' own suite (Fowler, Noll, Vo: test_fnv.c).
  test.for([
    ["", "cbf29ce484222325"],
    ["a", "af63dc4c8601ec8c"],
    ["foobar", "85944171f73967e8"],
  ] as const)("of %o is %s", ([text, hash]) => {
    expect(fnv1a(text)).toBe(hash);
  });

  test("does not mind the order of fields, but that of a list", () => {
    expect(fingerprint({ a: 1, b: { c: 2, d: 3 } })).toBe(fingerprint({ b: { d: 3, c: 2 }, a: 1 }));
    expect(fingerprint([1, 2])).not.toBe(fingerprint([2, 1]));
  });
});

describe("a shared find that is kept", () => {
  const own = ownFrom(plum);

  test("stays labelled as a copy of the invented find it is", () => {
    expect(own.copyOf).toBe(DEMO_FINDS[0]!.id);
  });

  test("is known again, though it was changed since", () => {
    const changed: OwnFind = { ...own, name: "Mine", answers: { ...own.answers, price: 5 } };
    expect(keptAlready(plum, [changed])).toBe(changed);
  });

  test("is known in the sender's own browser, under its own id", () => {
    const sent: OwnFind = {
      id: "own-1",
      name: plum.name,
      answers: { ...plum.answers, paid: true, price: 9, month: 4 },
    };
    const link = sharedFind({ ...DEMO_FINDS[0]!, id: "own-1", invented: false }, sent);
    expect(keptAlready(link, [sent])).toBe(sent);
  });

  test("is not taken for another find", () => {
    expect(keptAlready(plum, [{ ...own, id: "own-2", name: "Other" }])).toBeUndefined();
  });
});

describe("what is not read", () => {
  test("is told by its path", () => {
    expect(leftOut({ a: 1, b: { c: [1], d: "x" } }, { a: 1, b: { c: [2] } })).toEqual(["b/c", "b/d"]);
  });

  test("is told where the catalogue does not hold it", async () => {
    const known = await referenceOf();
    const answers = {
      attributes: { category: "hybrid", era: "4000s" },
      observations: {
        chain: { level: "ok" },
        halo: { level: "none" },
        headset: { front: { level: "nope" } },
      },
    };
    expect(notKnown(answers, known)).toEqual(["attributes/era", "observations/halo", "observations/headset"]);
  });
});
