import type { Find } from "../finds/find.ts";
import { uncapital } from "../words/count.ts";

/** A find among others, inside a sentence: where a page about one would say "it", its kind says which. */
export function calledAmong({ called, name }: Pick<Find, "called" | "name">): string {
  return called === "it" ? `the ${uncapital(name)}` : called;
}
