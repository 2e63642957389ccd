import { describe, expect, test } from "vitest";
import { chosen, keptIds, toggled, withCopy } from "../../../dashboard/compare/chosen.ts";

const KNOWN = ["a", "b", "c", "d", "e", "f", "g"];

describe("the finds side by side", () => {
  test("are the four best earners until the user chooses", () => {
    expect(chosen(null, KNOWN, ["g", "c", "a", "b", "d"])).toEqual(["g", "c", "a", "b"]);
    expect(chosen(null, KNOWN, ["g"])).toEqual(["g"]);
  });

  test("are those kept, in their order, without those that are gone", () => {
    expect(chosen(["d", "x", "a"], KNOWN, ["g"])).toEqual(["d", "a"]);
    expect(chosen([...KNOWN], KNOWN, [])).toHaveLength(6);
  });

  test("are two at least and six at most", () => {
    expect(toggled(["a", "b"], "b")).toEqual(["a", "b"]);
    expect(toggled(["a", "b"], "c")).toEqual(["a", "b", "c"]);
    expect(toggled(["a", "b", "c"], "a")).toEqual(["b", "c"]);
    expect(toggled(KNOWN.slice(0, 6), "g")).toEqual(KNOWN.slice(0, 6));
  });

  test("take a copy in right behind its original; where there is no room the last of the others goes", () => {
    expect(withCopy(["a", "b", "c"], "b", "new")).toEqual(["a", "b", "new", "c"]);
    expect(withCopy(["a", "b"], "c", "new")).toEqual(["a", "b", "c", "new"]);
    expect(withCopy(KNOWN.slice(0, 6), "f", "new")).toEqual(["a", "b", "c", "d", "f", "new"]);
    expect(withCopy(KNOWN.slice(0, 6), "g", "new")).toEqual(["a", "b", "c", "d", "g", "new"]);
  });

  test("are read from what was kept, nonsense left out", () => {
    expect(keptIds(["a", 3, "", "a", "b"])).toEqual(["a", "b"]);
    for (const odd of [null, {}, "a", [], [1]]) expect(keptIds(odd)).toBeNull();
  });
});
