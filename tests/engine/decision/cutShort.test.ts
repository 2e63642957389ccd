import { describe, expect, test } from "vitest";
import { cutShort } from "../../../worker/engine/decision/cutShort.ts";
import { NO_WAY, type Uncertainty } from "../../../worker/engine/service/uncertainty.ts";
import { playedCourses } from "../walker/finds.ts";

const CLASSES = Float64Array.of(0.4, 0.6);

describe("an opening job that ends the frame", () => {
  const { find, course } = playedCourses().find(({ name }) => name === "A7 make-safe")!;
  const { plan } = course;
  const { ledger } = find.situation;
  const jobs = plan.tasks.map(({ operation }) => operation);
  const freeing = (id: string, endsFrame: boolean): Uncertainty => ({
    of: id,
    job: jobs.find((one) => one.id === id)!,
    resource: 0,
    opening: [],
    ways: [{ ...NO_WAY, chances: Float64Array.of(0.2, 0.2), endsFrame, minutes: { mean: 300, variance: 0 } }],
  });

  test("leaves the seized bottom bracket that would have been next: its own minutes are taken off", () => {
    expect(jobs.map(({ id }) => id).filter((id) => id.startsWith("free-"))).toEqual([
      "free-seatpost",
      "free-bb",
    ]);
    const [way] = cutShort(freeing("free-seatpost", true), [], CLASSES, plan, ledger).ways;
    const [task, ...steps] = ledger.forOperation(jobs.find(({ id }) => id === "free-bb")!, "bike").resources;
    const own = ledger.resources[task!]!;
    // Steps that the post needs too are taken in any case.
    const post = ledger.forOperation(jobs.find(({ id }) => id === "free-seatpost")!, "bike").resources;
    const more = steps.filter((index) => plan.resources.has(index) && !post.includes(index));
    const minutes = more.reduce(
      (sum, index) => sum + ledger.resources[index]!.minutes.mean,
      own.minutes.mean,
    );
    expect(way!.minutes.mean).toBeCloseTo(300 - minutes, 9);
    expect(way!.money.mean).toBeCloseTo(-own.money.mean, 9);
  });

  test("the last one leaves nothing, and a failure that the frame survives is followed by all the rest", () => {
    const last = freeing("free-bb", true);
    expect(cutShort(last, [], CLASSES, plan, ledger).ways[0]!.minutes).toEqual(last.ways[0]!.minutes);
    const survived = freeing("free-seatpost", false);
    expect(cutShort(survived, [], CLASSES, plan, ledger)).toBe(survived);
  });
});
