import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { levelNeeded } from "../../../worker/engine/inspection/neededLevel.ts";
import { checkOf, INDEX, inspected } from "../../engine/inspection/realTables.ts";

/** Facts that every mechanic knows: common practice, no source. */

/** Rank of a level in its check, 0 the best. */
function rank(check: string, level: string): number {
  return INDEX.byId.get(check)!.ranks.get(level)!;
}

function finding(check: string, level: string) {
  return inspected({ [check]: { level } }).findings[0];
}

describe("facts of the trade (common practice, no source)", () => {
  test("equal string distances mean an aligned rear, whatever the distance", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 150 }), (distance) => {
        const { findings } = inspected({
          "rear-alignment": { measured: { left: distance, right: distance } },
        });
        expect(findings[0]).toMatchObject({ level: "true", derived: { value: 0 } });
        expect(findings[0]?.note).toMatch(/^Rear end in line/);
      }),
    );
  });

  test("a rear end is as far out to the left as to the right", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 150 }), fc.integer({ min: 0, max: 150 }), (left, right) => {
        const [one] = inspected({ "rear-alignment": { measured: { left, right } } }).findings;
        const [other] = inspected({ "rear-alignment": { measured: { left: right, right: left } } }).findings;
        expect([one?.level, one?.derived]).toEqual([other?.level, other?.derived]);
      }),
    );
  });

  test("a chain at 0.5 % still has life on an older drivetrain with a wide chain, and none on eleven sprockets", () => {
    const [chain] = inspected({ chain: { measured: { length24: 304.8 * 1.005 } } }).findings;
    expect(chain?.rank).toBeLessThan(rank("chain", levelNeeded(checkOf("chain"), 6)!));
    expect(chain?.rank).toBeGreaterThanOrEqual(rank("chain", levelNeeded(checkOf("chain"), 11)!));
  });

  test("a stiff rusted chain is done, however short it measures", () => {
    const { findings } = inspected({ chain: { measured: { length24: 304.8 }, flags: ["rusted_stiff"] } });
    expect(findings[0]?.level).toBe("gone");
  });

  test("surface rust is no block; rust through the tube is, and ends the job", () => {
    expect(finding("rust", "surface")).toMatchObject({ safety: "none", severity: 1 });
    expect(finding("rust", "holed")?.safety).toBe("block");
    const terminal = (level: string) => checkOf("rust").levels.find((one) => one.id === level)?.terminal;
    expect([terminal("surface"), terminal("holed")]).toEqual([null, "recycle"]);
  });

  test("a yielded front end, a bond that failed and a creased tube end the frame", () => {
    for (const [check, level] of [
      ["front-impact", "clear"],
      ["alloy-corrosion", "bond-failure"],
      ["frame-dents", "creased"],
      ["frame-cracks", "crack-structural"],
    ]) {
      expect(checkOf(check!).levels.find((one) => one.id === level)?.terminal).toBe("parts-or-recycle");
    }
  });

  test("a number filed off, or a bike reported, stops everything; no number looked for does not", () => {
    const level = (id: string) => checkOf("serial").levels.find((one) => one.id === id);
    expect([level("removed")?.terminal, level("reported")?.terminal]).toEqual(["stop", "stop"]);
    expect(level("not-queried")).toMatchObject({ safety: "owed", terminal: null });
  });

  test("a frayed brake cable blocks riding, a corroded one is told", () => {
    expect(finding("inner-cable", "frayed")?.safety).toBe("block");
    expect(finding("inner-cable", "corroded")?.safety).toBe("advisory");
  });

  test("disc pads are thin by nature: 1.6 mm is enough there and low on a rim brake", () => {
    const pads = { "brake-pads": { measured: { thickness: 1.6 } } };
    expect(inspected(pads, { brakeType: "disc-mechanical" }).findings[0]?.level).toBe("ok");
    expect(inspected(pads, { brakeType: "rim-caliper" }).findings[0]?.level).toBe("low");
  });

  test("a tyre of eleven years is old whatever it looks like", () => {
    expect(inspected({ "tyre-age": { measured: { age: 11 } } }).findings[0]?.level).toBe("old");
  });

  test("an aluminium frame does not rust, a steel one has no carbon to inspect, a threadless stem has no wedge", () => {
    const aluminium = inspected({ rust: { level: "deep" } }, { frameMaterial: "aluminium" });
    expect(aluminium.ignored.map((one) => one.check)).toEqual(["rust"]);
    const steel = inspected({ "carbon-damage": { level: "broken" } });
    expect(steel.ignored.map((one) => one.check)).toEqual(["carbon-damage"]);
    const threadless = inspected({ "stem-free": { level: "stuck" } }, { steering: "threadless" });
    expect(threadless.ignored.map((one) => one.check)).toEqual(["stem-free"]);
  });

  test("brakes that pull up strongly clear their pads and cables; weak ones clear nothing", () => {
    const unseen = (level: string) =>
      inspected({ "brake-function": { level } }).unseen.filter((one) => one.acquittedBy === "brake-function");
    expect(unseen("strong").map((one) => one.check)).toEqual(
      expect.arrayContaining(["brake-pads", "inner-cable"]),
    );
    expect(unseen("weak")).toEqual([]);
  });

  test("hubs that run smoothly clear their cones", () => {
    const { unseen } = inspected({ "hub-bearings": { level: "smooth" } });
    expect(unseen.find((one) => one.check === "hub-cones")?.acquittedBy).toBe("hub-bearings");
  });

  test("a bike kept outdoors is likelier to be rusted, and to hold its post, than one kept indoors", () => {
    const fault = (kept: "indoors" | "outdoors", check: string) =>
      1 - inspected({}, { kept }).unseen.find((one) => one.check === check)!.probabilities[0]!;
    for (const check of ["rust", "seatpost-free", "chain", "inner-cable"]) {
      expect(fault("outdoors", check)).toBeGreaterThan(fault("indoors", check));
    }
  });

  test("an aluminium post in a steel frame is likelier to be stuck than a steel post", () => {
    const stuck = (postMaterial: "steel" | "aluminium") => {
      const { probabilities } = inspected({}, { postMaterial }).unseen.find(
        (one) => one.check === "seatpost-free",
      )!;
      return probabilities.slice(rank("seatpost-free", "stuck")).reduce((a, b) => a + b, 0);
    };
    expect(stuck("aluminium")).toBeGreaterThan(stuck("steel"));
  });
});
