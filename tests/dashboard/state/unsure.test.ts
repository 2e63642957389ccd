import { expect, test } from "vitest";
import { setUnsure, unsureOf } from "../../../dashboard/state/unsure.ts";

test("what could not be told of a copy is its own; until then it has its original's", () => {
  const original = { id: "own-1" };
  const known = ["own-1", "own-2"];
  const copy = { id: "own-2", copyOf: "own-1" };
  expect(unsureOf(copy)).toEqual([]);
  setUnsure("own-1", ["headset"], known);
  expect(unsureOf(copy)).toEqual(["headset"]);
  setUnsure("own-2", ["headset", "chain"], known);
  expect(unsureOf(original)).toEqual(["headset"]);
  expect(unsureOf(copy)).toEqual(["headset", "chain"]);
  setUnsure("own-2", [], known);
  expect(unsureOf(copy)).toEqual([]);
});

test("what could not be told of a find that was removed goes with the next change", () => {
  setUnsure("own-3", ["headset"], ["own-3"]);
  setUnsure("own-4", ["chain"], ["own-4"]);
  expect(unsureOf({ id: "own-3" })).toEqual([]);
  expect(unsureOf({ id: "own-4" })).toEqual(["chain"]);
});
