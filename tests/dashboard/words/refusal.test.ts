import { describe, expect, test } from "vitest";
import { atField } from "../../../dashboard/words/atField.ts";
import { inHours, inPercent, refusal } from "../../../dashboard/words/refusal.ts";
import { check } from "../fixtures/check.ts";

describe("a refused figure", () => {
  test("is named as its field is, not by the id that the API has for it", () => {
    expect(atField("Weeks until it must be gone", "weeks must be at least 1, not 0")).toBe(
      "Weeks until it must be gone: must be at least 1, not 0.",
    );
    expect(atField("Money spent", "A price is nothing or more.")).toBe("A price is nothing or more.");
    expect(refusal({ pointer: "/market/weeks", message: "weeks must be at least 1, not 0" }, [])).toBe(
      "Weeks until it must be gone: must be at least 1, not 0.",
    );
    const bought = {
      pointer: "/find/soFar/bought/3/quantity",
      message: "quantity must be more than 0, not 0",
    };
    expect(refusal(bought, [])).toBe("How much: must be more than 0, not 0.");
  });

  test("is told in the unit it is typed in", () => {
    expect(inPercent("haggling must be at most 0.5, not 0.9")).toBe(
      "haggling must be at most 50 %, not 90 %",
    );
    expect(inHours("minutes must be at most 600, not 690")).toBe("minutes must be at most 10 h, not 11.5 h");
    expect(
      refusal({ pointer: "/market/haggling", message: "haggling must be at most 0.5, not 0.9" }, []),
    ).toBe("What buyers talk off: must be at most 50 %, not 90 %.");
  });

  test("of a check stands under the check's name, and any other as it is", () => {
    const wrong = { pointer: "/observations/headset/level", message: "level is unknown" };
    expect(refusal(wrong, [check()])).toBe("Headset play. Level is unknown.");
    expect(refusal({ pointer: "/elsewhere", message: "no such thing" }, [])).toBe("No such thing.");
  });
});
