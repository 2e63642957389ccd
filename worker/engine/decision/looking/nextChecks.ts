import type { Book } from "../book.ts";
import type { Looking } from "./looking.ts";
import type { NextCheck } from "./nextCheck.ts";
import { openTests } from "./openTests.ts";
import { unmadeChecks } from "./unmadeChecks.ts";

/**
 * Everything that may still be looked at, tested or asked, the best net gain a minute first; what is owed first among equals, then as the catalogue has it.
 */
export function nextChecks(looking: Looking, book: Book): readonly NextCheck[] {
  const all: NextCheck[] = [...openTests(looking, book), ...unmadeChecks(looking, book)];
  return all.sort((a, b) => b.gainPerMinute - a.gainPerMinute || Number(b.owed) - Number(a.owed));
}
