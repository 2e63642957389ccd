import { describe, expect, test } from "vitest";
import type { Ledger } from "../../../worker/engine/service/ledger.ts";
import { withOwnTime } from "../../../worker/engine/service/ownTime.ts";
import { releaseTime } from "../../../worker/engine/service/seizedPart.ts";
import { openEnd } from "../../../worker/engine/service/stopLimit.ts";
import { NO_WAY, type Uncertainty } from "../../../worker/engine/service/uncertainty.ts";

const RELEASE = releaseTime({ optimistic: 5, likely: 20, pessimistic: 90 }, 0.3);
const END = openEnd(RELEASE, 60, 0.2, { stepMinutes: 15, mostMinutes: 240 });
const LEDGER = { resources: [{ task: { openEnd: END } }, { task: { openEnd: null } }] } as unknown as Ledger;

function seized(resource: number): Uncertainty {
  const chances = Float64Array.of(1 - END.releaseChance);
  const minutes = { mean: 40, variance: 2 * 40 * (END.limit - END.minutes.mean) };
  return { of: "post", job: null, resource, opening: [], ways: [{ ...NO_WAY, chances, minutes }] };
}

describe("a seized part whose failure is told apart", () => {
  test("has taken all of its time where it is given up, and what follows adds nothing to how that varies", () => {
    const [way] = withOwnTime(seized(0), LEDGER).ways;
    expect(END.minutes.mean + way!.minutes.mean).toBeCloseTo(END.limit + 40, 9);
    expect(END.minutes.variance + way!.minutes.variance).toBeCloseTo(0, 9);
  });

  test("takes on the whole the time that it is tried: mean and variance of both ends together", () => {
    const { ways, otherwise } = withOwnTime(seized(0), LEDGER);
    const [stuck, free] = [1 - END.releaseChance, END.releaseChance];
    // Without the 40 minutes that follow.
    const [late, early] = [ways[0]!.minutes.mean - 40, otherwise!.mean];
    expect(stuck * late + free * early).toBeCloseTo(0, 9);
    const within = free * (END.minutes.variance + otherwise!.variance);
    const between = stuck * late ** 2 + free * early ** 2;
    expect(within + between).toBeCloseTo(END.minutes.variance, 7);
    expect(END.minutes.variance + otherwise!.variance).toBeGreaterThan(0);
  });

  test("any other job stands as it is", () => {
    const job = seized(1);
    expect(withOwnTime(job, LEDGER)).toBe(job);
  });
});
