import { expect, test } from "vitest";
import { unbroken } from "../../../dashboard/words/unbroken.ts";

test("a minus stays on the line of its figure, and nothing else is joined", () => {
  expect(unbroken("likely between \u2212€28 and €55")).toBe("likely between \u2212\u2060€28 and €55");
  expect(unbroken("5 \u2212 3")).toBe("5 \u2212 3");
});
