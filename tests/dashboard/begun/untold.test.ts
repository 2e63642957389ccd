import { describe, expect, test } from "vitest";
import type { ReportedFinding } from "../../../dashboard/api/types.ts";
import { untoldResults } from "../../../dashboard/begun/untold.ts";
import { referenceOf } from "../fixtures/service.ts";

const found = (check: string, level: string, curedBy: readonly string[] = []) =>
  ({ check, level, curedBy }) as unknown as ReportedFinding;
const ready = (...owed: string[]) => ({ ready: false, blocking: [], owed });

describe("a test or a query that is done", async () => {
  const known = await referenceOf();
  const untold = (done: string[], findings: ReportedFinding[], ...owed: string[]) =>
    untoldResults(known, done, { findings, readiness: ready(...owed) });

  test("is asked for its result at the check that stands as before, and no more once that is answered", () => {
    const query = { operation: "query-serial", check: "serial" };
    expect(untold(["query-serial"], [found("serial", "not-queried")], "serial")).toEqual([query]);
    expect(untold(["query-serial"], [found("serial", "clear")])).toEqual([]);
    expect(untold(["query-serial"], [found("serial", "reported")])).toEqual([]);
    expect(untold([], [found("serial", "not-queried")])).toEqual([]);
  });

  test("is asked at owed checks where none of its checks was answered", () => {
    expect(untold(["query-serial"], [], "serial")).toEqual([{ operation: "query-serial", check: "serial" }]);
    expect(untold(["query-serial"], [])).toEqual([]);
    // It was made for the cracks: the impact that nobody looked for is none of its results.
    expect(untold(["decide-crack"], [found("frame-cracks", "none")], "front-impact")).toEqual([]);
    expect(untold(["decide-crack"], [found("frame-cracks", "paint-line")], "front-impact")).toEqual([
      { operation: "decide-crack", check: "frame-cracks" },
    ]);
  });

  test("is work that cures nothing by itself: other work has no result to tell", () => {
    const others = known.operations.filter(({ settles }) => settles.length === 0).map(({ id }) => id);
    expect(others.length).toBeGreaterThan(20);
    expect(untold(others, [found("serial", "not-queried")], "serial")).toEqual([]);
  });
});
