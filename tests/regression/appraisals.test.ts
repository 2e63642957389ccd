import { describe, expect, test } from "vitest";
import type { Appraisal } from "../../worker/engine/decision/appraisal.ts";
import { appraise } from "../../worker/engine/decision/appraise.ts";
import { BOOK } from "../engine/decision/shippedBook.ts";
import { CASES, requestOf } from "../engine/workedCases/workedCase.ts";

/**
 * Detects change, proves nothing: the answers as they were when this was last looked at, to the tenth of a unit. A change of tables or method that is meant
 * is taken over with `vitest -u` after the differences were read; one that is not meant is a fault.
 */

const tenth = (value: number | null | undefined) =>
  value === null || value === undefined ? null : Math.round(value * 10) / 10;

function digest({ courses, decision, readiness, value, hidden }: Appraisal) {
  return {
    decided: [decision.course, decision.lookFirst, decision.stop].join(" / "),
    walkAwayPrice: tenth(decision.walkAwayPrice),
    breakEven: tenth(decision.breakEvenSalePrice),
    value:
      value && [value.asFound, value.madeSafe, value.restored, value.parts].map((band) => tenth(band?.p50)),
    readiness: `${readiness.blocking.length} blocking, ${readiness.owed.length} owed`,
    hidden: hidden.slice(0, 3).map(({ check, level }) => `${check}:${level}`),
    courses: courses.map(({ course, margin, hours, netBenefit, lossProbability, plan }) =>
      margin === null
        ? `${course}: closed`
        : `${course}: margin ${tenth(margin.mean)} (${tenth(margin.p10)} to ${tenth(margin.p90)}), ${tenth(hours!.mean)} h, net ${tenth(netBenefit)}, loss ${tenth(100 * lossProbability!)} %, ${plan!.operations.length} operations, cost ${tenth(plan!.cost.mean)}`,
    ),
  };
}

describe("detects change, proves nothing", () => {
  test.each(["A1", "A3", "A5", "A7", "A9", "A10", "A12"])("%s answers as it did", (id) => {
    const one = CASES.find((candidate) => candidate.id === id)!;
    expect(digest(appraise(requestOf(one), BOOK))).toMatchSnapshot();
  });
});
