import { DEMO_FINDS } from "../finds/demo.ts";
import { ownFinds } from "./finds.ts";

/** Ids of every find there is, described far enough or not, and of what copies were made from: what is kept by find of any other is of a find that was removed. */
export function knownIds(): readonly string[] {
  const own = ownFinds.all.peek().flatMap(({ id, copyOf }) => (copyOf === undefined ? [id] : [id, copyOf]));
  return [...DEMO_FINDS.map(({ id }) => id), ...own];
}
