import { describe, expect, test } from "vitest";
import type { TestModule } from "vitest/node";
import { countLines, countsAtExit, countTests } from "./countLine.ts";

/** As much of a finished test file as is counted. */
function file(states: readonly string[], errors: readonly unknown[] = []): TestModule {
  const tests = states.map((state) => ({ result: () => ({ state }) }));
  return { errors: () => errors, children: { allTests: () => tests } } as unknown as TestModule;
}

describe("the closing line", () => {
  test("is the counts alone; what was skipped stands on the line before", () => {
    expect(countLines({ passed: 3, failed: 0, skipped: 0 })).toBe("3 passed, 0 failed\n");
    expect(countLines({ passed: 3, failed: 1, skipped: 2 })).toBe("2 skipped\n3 passed, 1 failed\n");
  });

  test("counts each test once by how it ended", () => {
    const files = [file(["passed", "failed", "skipped"]), file(["passed"])];
    expect(countTests(files, 0)).toEqual({ passed: 2, failed: 1, skipped: 1 });
  });

  test("a test that never finished, a file that did not load and a stray error are failures", () => {
    expect(countTests([file(["pending"])], 0).failed).toBe(1);
    expect(countTests([file([], [new Error("no such module")])], 0).failed).toBe(1);
    expect(countTests([file(["passed"])], 2).failed).toBe(2);
  });

  test("a run that ends badly never closes with no failure", () => {
    expect(countsAtExit({ passed: 3, failed: 0, skipped: 0 }, 1).failed).toBe(1);
    expect(countsAtExit({ passed: 3, failed: 2, skipped: 0 }, 1).failed).toBe(2);
    expect(countsAtExit({ passed: 3, failed: 0, skipped: 0 }, 0).failed).toBe(0);
  });
});
