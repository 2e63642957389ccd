import { uncapital } from "./count.ts";

/** Of a test or a query that is done. */
export const RESULT_UNTOLD = "The test is done; its result is not told yet.";

/** "Say what it showed: serial number": leads to the check where a test's result is answered. */
export function sayResult(check: string): string {
  return `Say what it showed: ${uncapital(check)}`;
}
