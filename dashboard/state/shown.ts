import type { Route } from "./route.ts";

/** Pages on which every find stands with its answer. */
const OF_ALL: readonly Route["page"][] = ["finds", "compare", "selling"];

/** Whether a page shows the answer about a find: the one it is about, or every one where they stand together. */
export function isShown(here: Route, id: string): boolean {
  return "id" in here && here.id !== null ? here.id === id : OF_ALL.includes(here.page);
}
