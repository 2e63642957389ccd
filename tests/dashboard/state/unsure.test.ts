import { expect, test } from "vitest";
import { setUnsure, unsureOf } from "../../../dashboard/state/unsure.ts";

test("what could not be told of a copy is its own; until then it has its original's", () => {
  const original = { id: "own-1" };
  const copy = { id: "own-2", copyOf: "own-1" };
  expect(unsureOf(copy)).toEqual([]);
  setUnsure("own-1", ["headset"]);
  expect(unsureOf(copy)).toEqual(["headset"]);
  setUnsure("own-2", ["headset", "chain"]);
  expect(unsureOf(original)).toEqual(["headset"]);
  expect(unsureOf(copy)).toEqual(["headset", "chain"]);
  setUnsure("own-2", []);
  expect(unsureOf(copy)).toEqual([]);
});
