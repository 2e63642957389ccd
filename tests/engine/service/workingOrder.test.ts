import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { weighCourses } from "../../../worker/engine/decision/weigh.ts";
import { readCatalogue } from "../../../worker/tables.ts";
import { situationFor } from "../decision/lookedOver.ts";
import { likelyFind } from "../properties/anyFind.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";

/** Read from the table row by row: which operation may not come before which. */
const ROWS = new Map(readCatalogue().service.operations.map((row) => [row.id, row]));
const LAST = ["photograph", "sell-handover", "paid-safety-check"];

function orders(request: AppraisalRequest): string[][] {
  return weighCourses(situationFor(request)).flatMap((course) =>
    course.open ? [course.plan.tasks.map(({ operation }) => operation.id)] : [],
  );
}

/** Pairs that stand the wrong way round, "late before early". */
function misplaced(order: readonly string[]): string[] {
  return order.flatMap((id, place) => {
    const before = ROWS.get(id)!.after.filter((early) => order.indexOf(early) > place);
    const all = id === "final-check" ? order.slice(place + 1).filter((other) => !LAST.includes(other)) : [];
    return [...before, ...all].map((early) => `${id} before ${early}`);
  });
}

describe("the order of work", () => {
  const cases = CASES.filter(({ expect: { stop } }) => !stop);

  test("the check of the order fails where it should", () => {
    expect(misplaced(["new-pads", "true-wheel"])).toEqual(["new-pads before true-wheel"]);
    expect(misplaced(["final-check", "new-chain", "photograph"])).toEqual(["final-check before new-chain"]);
  });

  test.each(cases.map((one) => [one.id, one] as const))(
    "%s: every operation comes after what must come first",
    (_, one) => {
      const all = orders(requestOf(one));
      expect(all.length).toBeGreaterThanOrEqual(2);
      expect(all.flatMap(misplaced)).toEqual([]);
    },
  );

  test("on any bike with any faults as well", () => {
    fc.assert(
      fc.property(likelyFind, (request) => {
        expect(orders(request).flatMap(misplaced)).toEqual([]);
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });

  test("papers, state and wash come first, then what may end the job, then the rest, then the polish, and the sale last", () => {
    const place = (id: string) => {
      const { selling, effect, failure, alwaysIn } = ROWS.get(id)!;
      if (selling) return 4;
      if (effect.polishes) return 3;
      if (alwaysIn.includes("sell-as-found")) return 0;
      return failure?.redecide ? 1 : 2;
    };
    fc.assert(
      fc.property(likelyFind, (request) => {
        for (const order of orders(request)) {
          // The final check comes after the polish as after all work, and a mechanic's after it.
          const places = order.filter((id) => !["final-check", "paid-safety-check"].includes(id)).map(place);
          expect(places.toSorted((a, b) => a - b)).toEqual(places);
        }
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });

  test("what may end the job comes before the first part is bought and fitted", () => {
    const [a7] = cases.filter(({ id }) => id === "A7");
    const [restore] = orders(requestOf(a7!));
    expect(restore!.indexOf("free-seatpost")).toBeLessThan(restore!.indexOf("new-tyres"));
    expect(restore!.indexOf("query-serial")).toBe(0);
    expect(restore!.at(-1)).toBe("sell-handover");
  });
});
