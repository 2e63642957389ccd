import { answersOf } from "../answers/answersOf.ts";
import type { Find } from "./find.ts";
import { LONGEST_NAME, newOwnFind, type OwnFind } from "./own.ts";

/**
 * A find of one's own with the answers of another, to change one thing and see what it does.
 * @param own the find itself where it is one's own: then even half-made measurements are copied
 * @param taken names that are in use
 */
export function copyOf(find: Find, own: OwnFind | undefined, taken: readonly string[]): OwnFind {
  return {
    ...newOwnFind(),
    name: copyName(find, taken),
    answers: own?.answers ?? answersOf(find.body),
    copyOf: find.copyOf ?? find.id,
  };
}

/** "Copy of Hill bike", "Copy of Plum hybrid (invented)", "Copy of Hill bike, 2" where that is taken. */
export function copyName(
  { name, invented }: Pick<Find, "name" | "invented">,
  taken: readonly string[],
): string {
  const mark = invented ? " (invented)" : "";
  const bare = name.replace(/^Copy of /, "").replace(/, \d+$/, "");
  const called = (end: string) => `Copy of ${bare.slice(0, LONGEST_NAME - 8 - end.length).trim()}${end}`;
  for (let n = 1; ; n++) {
    const candidate = called(n === 1 ? mark : `${mark}, ${n}`);
    if (!taken.includes(candidate)) return candidate;
  }
}
