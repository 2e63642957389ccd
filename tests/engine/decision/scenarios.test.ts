import { describe, expect, test } from "vitest";
import { benefitOf, playScenarios } from "../../../worker/engine/decision/scenarios.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { type Found, lookedOver } from "./lookedOver.ts";
import { plainAnswer } from "./plainAnswer.ts";
import { BOOK } from "./shippedBook.ts";

const RACER = { category: "road-racing", componentTier: "top", kept: "outdoors" } as const;
const UNSEEN = BOOK.catalogue.inspection.checks.map(({ id }) => id);
const FINDS: readonly (readonly [string, Found])[] = [
  ["a tourer looked over from end to end", {}],
  ["a dear racer of which nothing is known", { bike: RACER, unseen: UNSEEN }],
  ["one with a stuck post", { bike: RACER, unseen: UNSEEN, found: { "seatpost-free": "stuck" } }],
  ["one whose frame is finished", { bike: RACER, unseen: UNSEEN, found: { "front-impact": "clear" } }],
];

describe("the scenarios", () => {
  test.each(FINDS)("bring each course on average what it is expected to bring: %s", (_, found) => {
    const find = weighFind(lookedOver(found), BOOK);
    if (find.stop) throw new Error("a find that may be sold");
    const open = find.courses.filter((course): course is OpenCourse => course.open);
    const { players, draws } = playScenarios(open, find.situation);
    open.forEach(({ course, expected }, place) => {
      const mean =
        draws.reduce((sum, draw) => sum + benefitOf(players[place]!(draw), find.situation), 0) / draws.length;
      // 128 points of 80 dimensions: within a twentieth of what is at stake.
      const off = Math.abs(mean - expected.netBenefit);
      expect(off, course).toBeLessThan(0.05 * Math.max(50, Math.abs(expected.netBenefit)));
    });
  });

  test("say of parts that bring 200 and more, where nothing else is open, that breaking is best in nearly all ways", () => {
    const { decision } = plainAnswer(lookedOver(FINDS[3]![1]));
    expect(decision.course).toBe("break-for-parts");
    expect(decision.confidence).toBeGreaterThan(0.9);
  });
});
