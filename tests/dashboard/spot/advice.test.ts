import { describe, expect, test } from "vitest";
import type { Appraisal } from "../../../dashboard/api/types.ts";
import { adviceOf } from "../../../dashboard/spot/advice.ts";

type Next = Appraisal["nextChecks"][number];
const VALUE = {
  position: null,
  fee: 0,
  where: "spot",
  minutes: 1,
  sampleInformation: 0,
  netGain: 0,
  gainPerMinute: 0,
  offerSwing: 10,
  couldBecome: null,
  owed: false,
  method: "exact",
} as const;
const look = (check: string, netGain: number, more: Partial<typeof VALUE> | object = {}): Next =>
  ({ check, ...VALUE, netGain, ...more }) as Next;
const list = (checks: readonly string[], netGain: number) => ({
  checks,
  minutes: checks.length,
  sampleInformation: Math.max(0, netGain),
  netGain,
});
const answer = (nextChecks: readonly Next[], together = -1) => ({
  nextChecks,
  lookingOn: { spot: list(["rust", "headset"], together), bench: list([], 0), enough: false },
});

describe("advice", () => {
  test("is none where the answer gives none", () => {
    expect(adviceOf(null)).toBeNull();
    expect(adviceOf({ nextChecks: [], lookingOn: null })).toBeNull();
  });

  test("takes the checks of the spot in the answer's order, and those that pay alone as worth it", () => {
    const told = adviceOf(
      answer([look("headset", 3), look("chain", 2, { where: "bench" }), look("rust", -0.2)], 1),
    );
    expect(told?.order).toEqual(["headset", "rust"]);
    expect(told?.worth).toEqual(["headset"]);
    expect(told?.atHome).toEqual(["chain"]);
    expect(told?.of.rust).toEqual({ offerSwing: 10, couldBecome: null, owed: false });
  });

  test("takes the whole list where none pays alone and all of it together does", () => {
    expect(adviceOf(answer([look("headset", -1), look("rust", -1)], 2))?.worth).toEqual(["rust", "headset"]);
    expect(adviceOf(answer([look("headset", -1), look("rust", -1)], -2))?.worth).toEqual([]);
  });

  test("names the paid tests that are worth their fee", () => {
    const query = { operation: "serial-query", ...VALUE, netGain: 4, fee: 2, minutes: 5 } as Next;
    const scan = { operation: "scan", ...VALUE, netGain: -4, fee: 60, minutes: 5 } as Next;
    expect(adviceOf(answer([query, scan]))?.tests).toEqual([
      { operation: "serial-query", fee: 2, minutes: 5 },
    ]);
  });
});
