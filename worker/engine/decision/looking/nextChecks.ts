import type { Book } from "../book.ts";
import type { OpenCourse } from "../weighedCourse.ts";
import type { OpenFind } from "../weighFind.ts";
import type { NextCheck } from "./nextCheck.ts";
import { openTests } from "./openTests.ts";
import { unmadeChecks } from "./unmadeChecks.ts";

/**
 * Everything that may still be looked at, tested or asked, the best net gain a minute first; what is owed first among equals, then as the catalogue has it.
 * @param now the course decided on
 */
export function nextChecks(find: OpenFind, now: OpenCourse, book: Book): readonly NextCheck[] {
  const all: NextCheck[] = [...openTests(find, now, book), ...unmadeChecks(find, now, book)];
  return all.sort((a, b) => b.gainPerMinute - a.gainPerMinute || Number(b.owed) - Number(a.owed));
}
