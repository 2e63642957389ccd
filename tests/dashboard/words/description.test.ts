import { describe, expect, test } from "vitest";
import type { AppraisalBody, Reference } from "../../../dashboard/api/types.ts";
import { describedKind, factsLine } from "../../../dashboard/words/description.ts";

const reference = {
  attributes: {
    category: [{ value: "bmx", label: "BMX" }],
    era: [{ value: "1990s", label: "1990s" }],
    frameMaterial: [{ value: "steel", label: "Steel" }],
    componentTier: [{ value: "upper", label: "Upper" }],
  },
} as unknown as Reference;

const find = { category: "bmx", era: "1990s", frameMaterial: "steel", componentTier: "upper" };
const body = (purchase: object) => ({ find: { ...find, purchase } }) as unknown as AppraisalBody;

describe("the line of facts about a find", () => {
  test("names what is known in small letters, BMX in capitals, and what is asked or paid", () => {
    expect(factsLine(body({ price: 40 }), reference, "EUR")).toBe(
      "BMX, 1990s, steel, upper tier. Asked: €40.",
    );
    expect(factsLine(body({ price: 40, paid: true }), reference, "GBP")).toBe(
      "BMX, 1990s, steel, upper tier. Paid: £40.",
    );
    expect(factsLine(body({ price: 0 }), reference, "EUR")).toMatch(/ Asked: nothing\.$/);
    expect(describedKind({ category: "bmx", era: "1990s" }, reference)).toBe("BMX, 1990s");
  });

  test("leaves the price out where no figure may stand", () => {
    expect(factsLine(body({ price: 40 }), reference, null)).toBe("BMX, 1990s, steel, upper tier.");
  });
});
