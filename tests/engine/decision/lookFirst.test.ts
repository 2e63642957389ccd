import { describe, expect, test } from "vitest";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import { bestCourse } from "../../../worker/engine/decision/choice.ts";
import { lookFirst } from "../../../worker/engine/decision/lookFirst.ts";
import { lookingAt } from "../../../worker/engine/decision/looking/looking.ts";
import { nextChecks } from "../../../worker/engine/decision/looking/nextChecks.ts";
import { type OpenFind, weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { caseOf, requestOf } from "../workedCases/workedCase.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { BOOK } from "./shippedBook.ts";

function looked(request: AppraisalRequest) {
  const find = weighFind(request, BOOK) as OpenFind;
  const best = bestCourse(find.courses, find.situation);
  const look = lookFirst(nextChecks(lookingAt(find, best), BOOK), find.settled, BOOK);
  return { now: best.expected.netBenefit, look };
}

/** Best net benefit of a request; walking away from a stop is worth nothing. */
function best(request: AppraisalRequest): number {
  const { courses, decision } = appraise(request, BOOK);
  return decision.stop === null ? courses.find(({ course }) => course === decision.course)!.netBenefit! : 0;
}

const CARBON: Found = {
  bike: { frameMaterial: "carbon", era: "2010s", componentTier: "upper" },
  found: { "carbon-damage": "suspect" },
};
const answered = (level: string): Found => ({ ...CARBON, found: { "carbon-damage": level } });

describe("looking first", () => {
  test("is worth the tree of its two outcomes, less its fee and minutes, less deciding now: by hand", () => {
    const { now, look } = looked(lookedOver(CARBON));
    // Ultrasound: bad in 45 of 100; 20 30 60 minutes; the scan's price by the PERT rule.
    const { low, typical, high } = BOOK.service.parts.get("svc-carbon-scan")!.prices.new.upper;
    const fee = (low + 4 * typical + high) / 6;
    const minutes = (20 + 4 * 30 + 60) / 6;
    const tree = 0.55 * best(lookedOver(answered("none"))) + 0.45 * best(lookedOver(answered("broken")));
    expect(look!.id).toBe("carbon-inspect");
    expect(look!.netGain).toBeCloseTo(tree - fee - (minutes * 8) / 60 - now, 6);
  });

  test("is advised where it beats deciding now, and only there", () => {
    expect(appraise(lookedOver(CARBON), BOOK).decision.lookFirst).toBe("carbon-inspect");
    const cheap: Found = {
      ...CARBON,
      bike: { ...CARBON.bike, componentTier: "entry", category: "hybrid", era: "2000s" },
      workshop: { hourlyGoal: 40 },
    };
    expect(appraise(lookedOver(cheap), BOOK).decision.lookFirst).toBeNull();
  });

  test("a dearer scan is worth less by its price, until it is not advised at all", () => {
    const at = (price: number) =>
      looked(lookedOver({ ...CARBON, workshop: { partPrices: { "svc-carbon-scan": price } } })).look;
    expect(at(50)!.netGain - at(100)!.netGain).toBeCloseTo(50, 9);
    expect(at(5000)).toBeNull();
  });

  test("a paint line in steel is stripped and proved; a suspect front end as well", () => {
    const upper: Found = {
      bike: { componentTier: "upper", category: "road-racing" },
      find: { originality: 1 },
    };
    expect(
      appraise(lookedOver({ ...upper, found: { "frame-cracks": "paint-line" } }), BOOK).decision.lookFirst,
    ).toBe("decide-crack");
    expect(
      appraise(lookedOver({ ...upper, found: { "front-impact": "suspect" } }), BOOK).decision.lookFirst,
    ).toBe("decide-crack");
  });

  test("a number is queried before a good price is paid, and not where there is nothing to ask", () => {
    const purchase = { price: 100, paid: false };
    const unasked: Found = {
      bike: { componentTier: "upper" },
      find: { purchase },
      found: { serial: "not-queried" },
      workshop: { hourlyGoal: 2 },
    };
    const { now, look } = looked(lookedOver(unasked));
    // In 3 of 100 the number is reported, and nobody pays: by hand again.
    const clear = best(lookedOver({ ...unasked, found: { serial: "clear" } }));
    const worth = 0.97 * clear + 0.03 * 0 - ((4 + 4 * 8 + 20) / 6 / 60) * 2 - now;
    if (worth > 0) expect(look!.netGain).toBeCloseTo(worth, 6);
    expect(look?.id ?? null).toBe(worth > 0 ? "query-serial" : null);
    expect(appraise(lookedOver({ find: { purchase } }), BOOK).decision.lookFirst).toBeNull();
  });

  test("the expert's carbon racer: a scan before anything", () => {
    const { now, look } = looked(requestOf(caseOf("A10")));
    expect(look!.netGain).toBeGreaterThan(100);
    expect(now).toBeGreaterThan(0);
  });
});
