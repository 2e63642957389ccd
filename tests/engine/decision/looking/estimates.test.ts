import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { appraise } from "../../../../worker/engine/decision/appraise.ts";
import { bestCourse } from "../../../../worker/engine/decision/choice.ts";
import { answerOf } from "../../../../worker/engine/decision/looking/levelOutlook.ts";
import { lookingAt } from "../../../../worker/engine/decision/looking/looking.ts";
import { sampleInformation } from "../../../../worker/engine/decision/looking/sampleInformation.ts";
import { weighedAgain } from "../../../../worker/engine/decision/looking/weighedAgain.ts";
import { trustIn } from "../../../../worker/engine/decision/trust.ts";
import { type OpenFind, weighFind } from "../../../../worker/engine/decision/weighFind.ts";
import { DESCRIPTIONS } from "../../inspectors/drawnBike.ts";
import { likelyFind } from "../../properties/anyFind.ts";
import { allRequests } from "../../walker/finds.ts";
import { BOOK } from "../shippedBook.ts";

/** A look valued by class sums and by asking the whole engine anew for each of its levels. */
interface Compared {
  readonly estimated: number;
  readonly exact: number;
  /** Answers after which the course that is chosen is worth less than the one kept: the engine's noise rule, and what it plans for only once it is seen. */
  readonly worse: number;
  readonly answers: number;
  readonly perfectInformation: number;
}

/** The invented finds and the worked cases, and one of them with nothing looked at. */
const REQUESTS = [...allRequests().map(([, request]) => request), ...DESCRIPTIONS.slice(0, 1)];

function compared(find: OpenFind): Compared[] {
  const { courses, situation } = find;
  const now = bestCourse(courses, situation);
  const { begun, outlookOf } = lookingAt(find, now);
  const { perfectInformation } = trustIn(now, courses, situation);
  return find.inspection.unseen.flatMap((unseen): Compared[] => {
    const outlook = outlookOf([unseen.check]);
    if (outlook === null) return [];
    const ranks = [...unseen.probabilities.keys()].filter((rank) => unseen.probabilities[rank]! >= 1e-6);
    const chance = (rank: number) => unseen.probabilities[rank]!;
    const anew = ranks.map((rank) =>
      answerOf(weighedAgain(find, [unseen], [rank], chance(rank), BOOK), begun),
    );
    return [
      {
        estimated: sampleInformation(ranks.map((rank) => answerOf(outlook([rank], chance(rank)), begun))),
        exact: sampleInformation(anew),
        worse: anew.filter(({ chosen, kept }) => chosen < kept - 1e-9).length,
        answers: anew.length,
        perfectInformation: perfectInformation!,
      },
    ];
  });
}

describe("looks estimated with plans as they are, beside the whole engine asked anew", () => {
  const all = REQUESTS.map((request) => weighFind(request, BOOK)).flatMap((find) =>
    find.stop === null ? compared(find) : [],
  );

  test("differ by less than 1 EUR in nine of ten, and by 10 EUR at most", () => {
    expect(all.length).toBeGreaterThan(200);
    const off = all.map(({ estimated, exact }) => Math.abs(estimated - exact)).sort((a, b) => a - b);
    expect(off[Math.floor(0.9 * off.length)]).toBeLessThan(1);
    expect(off.at(-1)).toBeLessThan(10);
  });

  test("no look is worth more than knowing everything", () => {
    for (const { exact, perfectInformation } of all)
      expect(exact).toBeLessThanOrEqual(perfectInformation + 0.01);
  });

  test("one answer in fifty at most would make the choice worse, and counts as changing nothing", () => {
    const worse = all.reduce((sum, one) => sum + one.worse, 0);
    expect(worse / all.reduce((sum, { answers }) => sum + answers, 0)).toBeLessThan(0.02);
  });
});

describe("any find", () => {
  test("no look is worth more than knowing everything", () => {
    const looks = fc.sample(likelyFind, { numRuns: 60, seed: 11 }).flatMap((request) => {
      const { nextChecks, decision } = appraise(request, BOOK);
      return nextChecks.map(({ sampleInformation: worth }) => worth - (decision.perfectInformation ?? 0));
    });
    expect(looks.length).toBeGreaterThan(200);
    expect(Math.max(...looks)).toBeLessThanOrEqual(0);
  });
});
