import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyFind } from "../properties/anyFind.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { plainAnswer, plainOnce } from "./plainAnswer.ts";
import { BOOK } from "./shippedBook.ts";

const SEED = 20261125;
const answer = (found: Found) => plainAnswer(lookedOver(found));
const raised = (found: Found) => answer(found).cautions.map(({ id, kind }) => `${kind} ${id}`);

describe("the cautions of an answer", () => {
  test("come hard ones first, each once, each with the reason it was raised", () => {
    fc.assert(
      fc.property(anyFind, (request) => {
        const { cautions } = plainOnce(request);
        const kinds = cautions.map(({ kind }) => kind);
        expect(kinds).toEqual(kinds.toSorted());
        expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
        for (const { because, title, text } of cautions)
          for (const words of [because, title, text]) expect(words).toMatch(/\S/);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test("a finding raises the hard caution; not having looked raises a soft one at most", () => {
    const bar: Found = { bike: { barMaterial: "aluminium" } };
    expect(raised({ ...bar, found: { "bar-corrosion": "pitted" } })).toContain("hard bar-corroded");
    expect(raised({ ...bar, unseen: ["bar-corrosion"] })).toContain("soft bar-hidden");
    expect(raised(bar).filter((one) => one.includes("bar-"))).toEqual([]);
    fc.assert(
      fc.property(fc.subarray([...BOOK.checks.keys()]), (unseen) => {
        const found = answer({ unseen });
        const hard = found.cautions.filter(({ kind }) => kind === "hard").map(({ id }) => id);
        // A faultless bike: what is hard comes from work planned on faults that are only likely.
        expect(hard.filter((id) => !["lead-paint", "spray", "two-eyes"].includes(id))).toEqual([]);
      }),
      { seed: SEED, numRuns: 30 },
    );
  });

  test("a reason quotes the finding, the part of the plan, or that nobody looked", () => {
    const because = (found: Found, id: string) =>
      answer(found).cautions.find((one) => one.id === id)!.because;
    const { name, levels } = BOOK.checks.get("inner-cable")!;
    expect(because({ found: { "inner-cable": "frayed" } }, "brakes")).toBe(
      `${name}: ${levels.find(({ id }) => id === "frayed")!.description}`,
    );
    expect(because({ bike: { barMaterial: "aluminium" }, unseen: ["bar-corrosion"] }, "bar-hidden")).toMatch(
      /not looked at$/,
    );
    expect(because({}, "test-ride")).toMatch(/^In the plan: /);
  });

  test("a caution says where it bears: the checks that raised it, and the work it is about", () => {
    const bears = (found: Found, id: string) => answer(found).cautions.find((one) => one.id === id)!.bears;
    const cable = bears({ found: { "inner-cable": "frayed" } }, "brakes");
    expect(cable.checks).toEqual(["inner-cable"]);
    expect(cable.operations).toContain("new-brake-cables");
    expect(bears({ bike: { barMaterial: "aluminium" }, unseen: ["bar-corrosion"] }, "bar-hidden")).toEqual({
      checks: ["bar-corrosion"],
      operations: [],
    });
    fc.assert(
      fc.property(anyFind, (request) => {
        const { cautions, courses } = plainOnce(request);
        const planned = new Set(
          courses.flatMap(({ plan }) => plan?.operations.map(({ operation }) => operation) ?? []),
        );
        for (const one of cautions)
          for (const operation of one.bears.operations) expect(planned).toContain(operation);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  test("a stop shows its own caution and none that comes from a plan", () => {
    const { cautions } = answer({ found: { serial: "removed" } });
    expect(cautions[0]).toMatchObject({ id: "serial", kind: "hard" });
    expect(cautions.map(({ id }) => id)).not.toContain("seller-duty");
    expect(cautions.some(({ because }) => because.startsWith("In the plan"))).toBe(false);
  });
});

describe("work on which a life hangs, beyond the skill given", () => {
  const found = { headset: "indexed" };
  const bike = { componentTier: "upper" } as const;

  test("brings the hard caution, a paid second look and a mechanic's name beside the work, in every course that does it", () => {
    const marked = { ...found, finish: "marked" };
    const { cautions, courses } = answer({ bike, found: marked, workshop: { skill: 1 } });
    expect(cautions.map(({ id, kind }) => `${kind} ${id}`)).toContain("hard two-eyes");
    for (const id of ["restore", "make-safe"]) {
      const { operations, shoppingList } = courses.find(({ course }) => course === id)!.plan!;
      const done = (operation: string) => operations.find((one) => one.operation === operation)?.doneBy;
      expect([done("replace-headset"), done("paid-safety-check")]).toEqual(["mechanic", "service"]);
      // Touching up asks for more skill as well, but nobody falls for it.
      if (id === "restore") expect(done("touch-up")).toBe("self");
      expect(shoppingList.map(({ part }) => part)).toContain("svc-safety-check");
    }
  });

  test("costs what the second look costs, and nothing at the skill it asks for", () => {
    const cost = (skill: 1 | 2 | 3 | 4) => {
      const { courses } = answer({ bike, found, workshop: { skill } });
      return courses.find(({ course }) => course === "make-safe")!.plan!.cost.mean;
    };
    const { low, typical, high } = BOOK.service.parts.get("svc-safety-check")!.prices.new.upper;
    expect(cost(1) - cost(3)).toBeCloseTo((low + 4 * typical + high) / 6, 9);
    expect(cost(4)).toBe(cost(3));
    expect(raised({ bike, found, workshop: { skill: 3 } })).not.toContain("hard two-eyes");
  });

  test("is not every hard job: freeing a stuck post asks for more skill than 2, and only the bike is at stake", () => {
    const stuck: Found = {
      bike: { componentTier: "top" },
      found: { "seatpost-free": "stuck" },
      workshop: { skill: 2 },
    };
    const { cautions, courses } = answer(stuck);
    const work = courses.find(({ course }) => course === "make-safe")!.plan!.operations;
    expect(work.find(({ operation }) => operation === "free-seatpost")?.doneBy).toBe("self");
    expect(cautions.map(({ id }) => id)).not.toContain("two-eyes");
  });
});
