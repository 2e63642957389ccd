import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Answers } from "../../../dashboard/answers/answers.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { toBase64Url } from "../../../dashboard/share/base64url.ts";
import { fragmentOf, readFragment } from "../../../dashboard/share/fragment.ts";
import { type SharedFind, sharedFind } from "../../../dashboard/share/sharedFind.ts";
import { deflated } from "../../../dashboard/share/zlib.ts";

const word = fc.stringMatching(/^[a-z]+(-[a-z0-9]+)?$/);
const reading = fc.oneof(
  fc.record({ level: word }),
  fc.record({ measured: fc.dictionary(word, fc.double({ noNaN: true, noDefaultInfinity: true, min: 0 })) }),
  fc.record({ level: word, flags: fc.array(word, { maxLength: 3 }) }),
);
/** JSON knows no negative nought; every other number comes back as it was. */
const answers = fc.record(
  {
    attributes: fc.dictionary(word, word),
    observations: fc.dictionary(
      word,
      fc.oneof(reading, fc.record({ front: reading, rear: reading }), fc.record({ rear: reading })),
      { maxKeys: 60 },
    ),
    price: fc.double({ noNaN: true, noDefaultInfinity: true, min: 0 }),
    rearSprockets: fc.integer({ min: 1, max: 13 }),
    tyreMarking: fc.string(),
  },
  { requiredKeys: ["attributes", "observations"] },
);
const shared = fc.record({ name: fc.string({ unit: "grapheme", maxLength: 20 }), answers });

const plum = sharedFind(DEMO_FINDS[0]!, undefined);

describe("a find as a link", () => {
  test("comes back as it was, whatever was said and seen", async () => {
    await fc.assert(
      fc.asyncProperty(shared, async (find) => {
        const read = await readFragment(`#${await fragmentOf(find as unknown as SharedFind)}`);
        expect(read).toMatchObject({ shared: find });
      }),
      { numRuns: 60 },
    );
  });

  test("is letters that may stand behind # in any message, and short", async () => {
    const fragment = await fragmentOf(plum);
    expect(fragment).toMatch(/^[\w-]+$/);
    // 44 checks made: what the shortest common limit of an address (2,000 letters) bears twice.
    expect(fragment.length).toBeLessThan(1000);
  });

  test("is told as broken wherever it is cut", async () => {
    const whole = await fragmentOf(plum);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: whole.length - 1 }), async (length) => {
        expect(await readFragment(whole.slice(0, length))).toEqual({ wrong: "broken" });
      }),
      { numRuns: 60 },
    );
  });

  test("is told as broken where a letter of it was changed, or is another find", async () => {
    const whole = await fragmentOf(plum);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 4, max: whole.length - 2 }), async (at) => {
        const other = whole[at] === "A" ? "B" : "A";
        const read = await readFragment(whole.slice(0, at) + other + whole.slice(at + 1));
        expect("wrong" in read).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test.for([
    ["", "empty"],
    ["#", "empty"],
    ["#not a link", "broken"],
    [toBase64Url(new Uint8Array([2, 1, 2, 3])), "newer"],
    [toBase64Url(new Uint8Array([200, 1, 2, 3])), "foreign"],
  ] as const)("%s is %s", async ([fragment, wrong]) => {
    expect(await readFragment(fragment)).toEqual({ wrong });
  });

  test.for(['"a text"', "[]", "null", '{"name":"x"}', "no JSON"])("%s in it is no find", async (json) => {
    const fragment = toBase64Url(new Uint8Array([1, ...(await deflated(json))]));
    expect(await readFragment(fragment)).toEqual({ wrong: "foreign" });
  });

  test("that would unpack to more than any find is refused", async () => {
    const fragment = toBase64Url(new Uint8Array([1, ...(await deflated(" ".repeat(5_000_000)))]));
    expect(fragment.length).toBeLessThan(10_000);
    expect(await readFragment(fragment)).toEqual({ wrong: "broken" });
  });

  test("is read with what a message puts behind it", async () => {
    const fragment = await fragmentOf(plum);
    expect(await readFragment(`#${fragment}).`)).toMatchObject({ shared: plum });
  });

  test("never holds what is the workshop's own affair", async () => {
    const own: Answers = {
      ...plum.answers,
      price: 25,
      paid: true,
      travelMinutes: 40,
      travelCost: 6,
      soFar: { money: 30, done: ["wash"], bought: [] },
    };
    const find = { ...DEMO_FINDS[0]!, invented: false, id: "own-1" };
    const passed = sharedFind(find, { id: "own-1", name: "Hill bike", answers: own });
    expect(Object.keys(passed.answers).sort()).toEqual(
      Object.keys(plum.answers)
        .filter((key) => key !== "price")
        .sort(),
    );
    const asked = sharedFind(find, { id: "own-1", name: "", answers: { ...own, paid: false } });
    expect(asked.answers.price).toBe(25);
    // What somebody wrote into a link by hand is not taken either.
    const read = await readFragment(await fragmentOf({ name: "", answers: own }));
    expect(read).toMatchObject({ shared: { answers: passed.answers } });
    expect(JSON.stringify("shared" in read && read.shared)).not.toContain("soFar");
  });
});
