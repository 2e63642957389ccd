import { describe, expect, test } from "vitest";
import { faultOf, messagesAt } from "../../../dashboard/api/fault.ts";
import { foundBy, summary } from "../../../dashboard/describe/summary.ts";
import { readNumber } from "../../../dashboard/words/readNumber.ts";
import { refusal } from "../../../dashboard/words/refusal.ts";
import { check, STRING_TEST } from "../fixtures/check.ts";

describe("a number as people write it", () => {
  test.each([
    ["43.5", 43.5],
    ["43,5", 43.5],
    [" 1 200 ", 1200],
    ["1,200", 1200],
    ["306,3", 306.3],
    ["0,625", 0.625],
    ["\u22123", -3],
    [".5", 0.5],
    ["4.", 4],
    ["", undefined],
    ["abc", null],
    ["1.2.3", null],
    ["1e5", null],
  ])("%j is read as %j", (text, number) => {
    expect(readNumber(text)).toBe(number);
  });
});

describe("what was answered, in a few words", () => {
  test("names level, measurement or flag, and both wheels", () => {
    expect(summary(check(), undefined)).toBe("not looked at");
    expect(summary(check(), { level: "stuck-cut" })).toBe("Stuck cut");
    expect(summary(STRING_TEST, { measured: { left: 41, right: 40 } })).toBe("41 and 40 mm");
    expect(summary(STRING_TEST, { measured: { left: 41 } })).toBe("still to measure");
    expect(summary(STRING_TEST, { flags: ["sprung"], level: "smooth" })).toBe("Sprung by hand");
    expect(summary(check({ perWheel: true }), { rear: { level: "rough" } })).toBe("front open, rear rough");
  });

  test("says what a measurement came to, and when it lies on the line", () => {
    const finding = {
      check: "rear-alignment",
      position: "bike",
      level: "slight",
      rank: 1,
      severity: 1,
      safety: "none",
      source: "measured",
      derived: { value: 1.254, unit: "mm" },
      note: "",
      safetyBlock: false,
      curedBy: [],
    } as const;
    expect(foundBy(STRING_TEST, [finding])).toBe("Slight (1.25 mm).");
    expect(foundBy(STRING_TEST, [{ ...finding, borderline: ["true", "slight"] }])).toBe(
      "On the line between true and slight (1.25 mm): measure again.",
    );
    expect(foundBy(STRING_TEST, [{ ...finding, source: "observed" }])).toBe("");
  });
});

describe("a refusal", () => {
  const answer = (status: number, body: string) =>
    new Response(body, { status, headers: { "Content-Type": "application/problem+json" } });
  const pointer = "/observations/rear-alignment/measured/left";

  test("reaches the field its pointer names, and those above it", async () => {
    const errors = [{ pointer, message: "left requires at least 0 mm, got -3" }];
    const fault = await faultOf(
      answer(422, JSON.stringify({ title: "Unprocessable", status: 422, detail: "One field", errors })),
    );
    expect(messagesAt(fault, pointer)).toHaveLength(1);
    expect(messagesAt(fault, "/observations/rear-alignment")).toHaveLength(1);
    expect(messagesAt(fault, "/observations/rear")).toEqual([]);
    expect(messagesAt(null, pointer)).toEqual([]);
  });

  test("names the field as the page does", () => {
    const message = "left requires at least 0 mm, got -3";
    expect(refusal({ pointer, message }, [STRING_TEST])).toBe(
      "Rear alignment. String to seat tube, left requires at least 0 mm, got -3.",
    );
    expect(
      refusal(
        {
          pointer,
          message:
            "left requires a value from 0 to 150 mm (string to seat tube, left): nothing else can be on a bicycle; measure again, got 900",
        },
        [STRING_TEST],
      ),
    ).toBe(
      "Rear alignment. String to seat tube, left: a value from 0 to 150 mm, not 900. Nothing else can be on a bicycle; measure again.",
    );
    expect(refusal({ pointer: "/comparables/3/price", message: "price must be above 0" }, [])).toBe(
      "Your own sales, number 4 from the newest. Price must be above 0.",
    );
    expect(refusal({ pointer: "/comparables", message: "too many" }, [])).toBe("Your own sales. Too many.");
    expect(refusal({ pointer: "/find/kept", message: "kept is unknown" }, [])).toBe(
      "How was it kept? Kept is unknown.",
    );
  });

  test("adds what would be accepted, unless the message says it", async () => {
    const errors = [{ pointer: "/find/era", message: "no such era", allowed: ["1980s", "1990s"] }];
    const fault = await faultOf(answer(422, JSON.stringify({ title: "", status: 422, errors })));
    expect(messagesAt(fault, "/find/era")).toEqual(["no such era (1980s, 1990s)"]);
  });

  test("that is no problem details, or a failure of the service, is still told", async () => {
    expect(await faultOf(answer(400, "<html>"))).toEqual({
      kind: "refused",
      detail: "The service answered 400.",
      fields: [],
    });
    expect(await faultOf(answer(503, "{}"))).toMatchObject({ kind: "failed" });
  });
});
