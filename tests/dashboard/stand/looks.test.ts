import { describe, expect, test } from "vitest";
import type { NextCheck } from "../../../dashboard/api/types.ts";
import { limitsOn, lineBetween, neededAt, sprocketsOf } from "../../../dashboard/checks/limits.ts";
import { madeOn } from "../../../dashboard/checks/made.ts";
import { startFor, stepFor } from "../../../dashboard/describe/stepping.ts";
import {
  found,
  openLooks,
  paidTests,
  progressOf,
  rankedLooks,
  worstOf,
  worthTogether,
} from "../../../dashboard/stand/looks.ts";
import { nextPick, type PassedBy } from "../../../dashboard/stand/nextPick.ts";
import { check } from "../fixtures/check.ts";
import { referenceOf } from "../fixtures/service.ts";

const value = (netGain: number, minutes = 2) => ({
  position: null,
  owed: false,
  fee: 0,
  where: "bench" as const,
  minutes,
  sampleInformation: Math.max(0, netGain),
  netGain,
  gainPerMinute: netGain / minutes,
  offerSwing: null,
  couldBecome: null,
  method: "exact" as const,
});
const look = (id: string, netGain: number, minutes?: number): NextCheck => ({
  check: id,
  ...value(netGain, minutes),
});
const HEADSET = check();
const CHAIN = check({ id: "chain", name: "Chain", where: "bench", priority: "core" });
const BRAKES = check({ id: "brakes", name: "Brakes", ifNotChecked: "block", priority: "core" });
const CONES = check({ id: "cones", name: "Cones", where: "dismantled", priority: "extra" });
const ALL = [HEADSET, CHAIN, BRAKES, CONES];
const NONE_MADE = { observations: {}, findings: [] };
const NOTHING_PASSED: PassedBy = { unsure: [], later: [], goingOn: false };
const NO_LIST = new Set<string>();

describe("which checks are open", () => {
  test("those that were observed, on both wheels where apart, or that the description settles, are made", () => {
    const apart = check({ perWheel: true });
    const made = (observations: object, findings: { check: string }[] = []) =>
      madeOn(apart, { observations: observations as never, findings });
    expect(made({ headset: { level: "smooth" } })).toBe(true);
    expect(made({ headset: { front: { level: "smooth" } } })).toBe(false);
    expect(made({}, [{ check: "headset" }])).toBe(true);
    expect(made({})).toBe(false);
  });

  test("come by gain per minute, then owed ones, then by priority", () => {
    const ranked = rankedLooks({ nextChecks: [look("chain", 4), look("headset", 1)] });
    expect(openLooks(ALL, NONE_MADE, ranked).map(({ check: { id } }) => id)).toEqual([
      "chain",
      "headset",
      "brakes",
      "cones",
    ]);
    const made = { observations: { chain: { level: "smooth" } }, findings: [] };
    expect(openLooks(ALL, made, ranked)[0]?.check.id).toBe("headset");
  });

  test("paid tests stand apart, where they are worth their fee", () => {
    const scan: NextCheck = { operation: "carbon-inspect", ...value(5) };
    const dear: NextCheck = { operation: "query", ...value(-5) };
    expect(paidTests([scan, dear, look("chain", 1)])).toEqual([scan]);
    expect(rankedLooks({ nextChecks: [scan] })).toEqual([]);
  });

  test("are found by words of their name, their way of looking or their levels", () => {
    expect(found(ALL, "chain")).toEqual([CHAIN]);
    expect(found(ALL, "ROCK it")).toHaveLength(4);
    expect(found(ALL, "chain smooth")).toEqual([CHAIN]);
    expect(found(ALL, "saddle")).toEqual([]);
  });
});

describe("the next look here", () => {
  const at = (
    looks: readonly NextCheck[],
    passed: Partial<PassedBy> = {},
    together: ReadonlySet<string> = NO_LIST,
  ) => {
    const ranked = rankedLooks({ nextChecks: looks });
    const pick = nextPick(openLooks(ALL, NONE_MADE, ranked), together, { ...NOTHING_PASSED, ...passed });
    return { ...pick, next: pick.next?.check.id ?? null };
  };

  test("is the one that gains most a minute among those at hand", () => {
    expect(at([look("cones", 20), look("chain", 4), look("headset", 1)]).next).toBe("chain");
  });

  test("passes by what could not be told; what was put off comes once nothing else pays", () => {
    const looks = [look("chain", 4), look("headset", 1)];
    expect(at(looks, { unsure: ["chain"] }).next).toBe("headset");
    expect(at(looks, { later: ["chain"] }).next).toBe("headset");
    expect(at(looks, { later: ["chain"], unsure: ["headset"] }).next).toBe("chain");
  });

  test("is none where none pays, until the user goes on: then what is owed comes first", () => {
    const looks = [look("chain", -1), look("headset", -2), look("brakes", -3)];
    expect(at(looks)).toMatchObject({ next: null, open: 3, owed: 1 });
    expect(at(looks, { goingOn: true }).next).toBe("brakes");
    expect(at(looks, { goingOn: true, unsure: ["brakes"] }).next).toBe("chain");
  });

  test("is the best of a list that pays together although none pays alone", () => {
    const list = { checks: ["chain", "headset"], minutes: 4, sampleInformation: 6, netGain: 2 };
    const idle = { checks: [], minutes: 0, sampleInformation: 0, netGain: 0 };
    const together = worthTogether({ spot: idle, bench: list, enough: false });
    expect(at([look("chain", -1), look("headset", -2)], {}, together).next).toBe("chain");
    expect(worthTogether(null).size).toBe(0);
  });
});

describe("progress and findings", () => {
  test("a group counts what applies, and one without any is left out", () => {
    const groups = [
      { value: "steering", label: "Steering" },
      { value: "brakes", label: "Brakes" },
    ];
    expect(progressOf({ groups }, ALL, ({ id }) => id === "chain")).toEqual([
      { group: "steering", label: "Steering", checks: ALL, made: 1 },
    ]);
  });

  test("of two wheels the worse is shown, a block before all", () => {
    const finding = (position: string, severity: number, safetyBlock: boolean) =>
      ({ check: "headset", position, severity, safetyBlock }) as never;
    const [mild, bad, block] = [
      finding("front", 1, false),
      finding("rear", 3, false),
      finding("rear", 2, true),
    ];
    expect(worstOf([mild, bad], "headset")).toBe(bad);
    expect(worstOf([mild, bad, block], "headset")).toBe(block);
    expect(worstOf([mild], "chain")).toBeUndefined();
  });
});

describe("limits and steps of the catalogue", () => {
  test("disc pads have limits of their own; the chain's need follows the sprockets", async () => {
    const { checks, attributeDefaults } = await referenceOf();
    const pads = checks.find(({ id }) => id === "brake-pads")!.measurement!;
    expect(limitsOn(pads, { brakeType: "rim-caliper" })).toBe(pads.thresholds);
    expect(limitsOn(pads, { brakeType: "disc-mechanical" })).not.toBe(pads.thresholds);
    const chain = checks.find(({ id }) => id === "chain")!;
    // 11 and more 0.5 %, 9 or 10 or unknown 0.75 %, 5 to 8 or one 1.0 %: common practice, no source.
    expect([12, 10, undefined, 8, 1].map((n) => neededAt(chain, n))).toEqual([0.5, 0.75, 0.75, 1, 1]);
    expect(neededAt(HEADSET, 9)).toBeNull();
    expect(sprocketsOf({ drivetrain: "derailleur" }, 9, attributeDefaults)).toBe(9);
    expect(sprocketsOf({ drivetrain: "derailleur" }, undefined, attributeDefaults)).toBeUndefined();
    expect(sprocketsOf({ drivetrain: "hub-gear" }, undefined, attributeDefaults)).toBe(1);
  });

  test("the line between two levels is found from either side", async () => {
    const { checks } = await referenceOf();
    const { thresholds } = checks.find(({ id }) => id === "rear-alignment")!.measurement!;
    expect(lineBetween(thresholds, "slight", "out")).toBe(4);
    expect(lineBetween(thresholds, "out", "slight")).toBe(4);
    expect(lineBetween(thresholds, "true", "far")).toBeNull();
  });

  test("buttons step by half a millimetre, finer where the reading is, and start where a reading may be", async () => {
    const { checks } = await referenceOf();
    const of = (id: string) => checks.find((one) => one.id === id)!.measurement!;
    const step = (id: string) => stepFor(of(id).inputs[0]!, of(id));
    expect(["rear-alignment", "chain", "brake-pads", "rotor", "tyre-age", "spokes-broken"].map(step)).toEqual(
      [0.5, 0.5, 0.1, 0.05, 1, 1],
    );
    expect(step("tyre-size")).toBeNull();
    const start = (id: string, readings = {}) => startFor(of(id).inputs[0]!, of(id), readings);
    expect(start("chain")).toBeCloseTo(304.8, 9);
    expect(start("brake-pads")).toBe(1.5);
    expect(start("rear-alignment", { right: 41 })).toBe(41);
    for (const { measurement } of checks) {
      for (const input of measurement?.inputs ?? []) {
        const at = startFor(input, measurement!, {});
        expect(at).toBeGreaterThanOrEqual(input.min);
        expect(at).toBeLessThanOrEqual(input.max);
      }
    }
  });
});
