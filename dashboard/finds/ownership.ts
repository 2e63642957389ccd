import { DEMO_FINDS } from "./demo.ts";
import type { Find } from "./find.ts";

/** Whether a find is invented, or a copy of an invented one. */
export function isInvented({ invented, copyOf }: Pick<Find, "invented" | "copyOf">): boolean {
  return invented || (copyOf !== undefined && DEMO_FINDS.some(({ id }) => id === copyOf));
}

/** Whose a find is, in a word or two. */
export function ownership(find: Pick<Find, "invented" | "copyOf">): string {
  if (find.invented) return "invented";
  return isInvented(find) ? "copy of an invented find" : "yours";
}
