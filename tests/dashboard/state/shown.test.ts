import { expect, test } from "vitest";
import { routeOf } from "../../../dashboard/state/route.ts";
import { isShown } from "../../../dashboard/state/shown.ts";

const shownAt = (path: string) =>
  ["plum-hybrid", "own-1"].filter((id) => isShown(routeOf(path), id)).join(" ");

test.each([
  ["/", "plum-hybrid own-1"],
  ["/finds", "plum-hybrid own-1"],
  ["/compare", "plum-hybrid own-1"],
  ["/selling", "plum-hybrid own-1"],
  ["/finds/plum-hybrid", "plum-hybrid"],
  ["/finds/plum-hybrid/listing", "plum-hybrid"],
  ["/finds/own-1/stand", "own-1"],
  ["/describe/own-1", "own-1"],
  ["/spot/own-1", "own-1"],
  ["/selling/own-1", "own-1"],
  ["/selling/alone", ""],
  ["/describe", ""],
  ["/spot", ""],
  ["/together", ""],
  ["/prices", ""],
  ["/sheets", ""],
  ["/shared", ""],
  ["/no/such/page", ""],
])("%s shows the answers about: %s", (path, ids) => {
  expect(shownAt(path)).toBe(ids);
});
