import type { Reporter, TestModule } from "vitest/node";

/** How a run ended, in tests; a file that could not be loaded counts as one failed. */
export interface Counts {
  passed: number;
  failed: number;
  skipped: number;
}

/** The last lines of a run: "3 skipped" where any was, and then always "12 passed, 0 failed" on a line of its own. */
export function countLines({ passed, failed, skipped }: Counts): string {
  return `${skipped > 0 ? `${skipped} skipped\n` : ""}${passed} passed, ${failed} failed\n`;
}

/**
 * Counts the tests of a run by their state.
 * A file with errors of its own (it did not load, a hook at file level threw) adds one failure, and so does each
 * error outside any test.
 */
export function countTests(modules: readonly TestModule[], errorsOutsideTests: number): Counts {
  const counts: Counts = { passed: 0, failed: errorsOutsideTests, skipped: 0 };
  for (const module of modules) {
    if (module.errors().length > 0) counts.failed += 1;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      if (state === "passed") counts.passed += 1;
      else if (state === "skipped") counts.skipped += 1;
      else counts.failed += 1;
    }
  }
  return counts;
}

/**
 * The counts to print for a process that ends with an exit code: one failure where it ends badly and no test failed
 * (a set-up threw, a project did not start), so that such a run never closes with "0 failed".
 */
export function countsAtExit(counts: Counts, exitCode: number): Counts {
  return exitCode !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

/** Prints the closing line when the process ends, so that nothing comes after it. */
export default class CountLineReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): void {
    const counts = countTests(modules, unhandledErrors.length);
    process.once("exit", (exitCode) => {
      process.stdout.write(countLines(countsAtExit(counts, exitCode)));
    });
  }
}
