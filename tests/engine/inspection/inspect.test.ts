import { describe, expect, test } from "vitest";
import { DomainError } from "../../../worker/engine/domainError.ts";
import { compileInspection } from "../../../worker/engine/inspection/compileInspection.ts";
import type { Dimensions } from "../../../worker/engine/inspection/find.ts";
import { inspect } from "../../../worker/engine/inspection/inspect.ts";
import { lookedAt } from "../../../worker/engine/inspection/looked.ts";
import type { Observations } from "../../../worker/engine/inspection/observation.ts";
import { SMALL_TABLES, STEEL_TOURER } from "./smallTables.ts";

const INDEX = compileInspection(SMALL_TABLES);

function look(observations: Observations, attributes = STEEL_TOURER, dimensions: Dimensions = {}) {
  return inspect(attributes, dimensions, observations, INDEX);
}

/** The only finding of an inspection. */
function found(observations: Observations, attributes = STEEL_TOURER) {
  const { findings } = look(observations, attributes);
  expect(findings).toHaveLength(1);
  return findings[0]!;
}

function refused(observations: unknown, dimensions: Dimensions = {}): DomainError {
  try {
    look(observations as Observations, STEEL_TOURER, dimensions);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("one reading", () => {
  test("a judged level is taken as it is", () => {
    expect(found({ fork: { level: "poor" } })).toEqual({
      check: "fork",
      position: "bike",
      level: "poor",
      rank: 1,
      severity: 1,
      safety: "advisory",
      source: "observed",
      note: "It is poor.",
    });
  });

  test("the measurement wins over the judged level, and says its quantity with the unit", () => {
    expect(found({ chain: { level: "good", measured: { length24: 308 } } })).toMatchObject({
      level: "bad",
      source: "measured",
      derived: { value: 1.049868766, unit: "%" },
      note: expect.stringMatching(/^1.05 % longer than new\. It is bad\./),
    });
  });

  test("a flag wins over the measurement, whose quantity is still told", () => {
    const finding = found({ chain: { measured: { length24: 304.8 }, flags: ["rusted_stiff"] } });
    expect(finding).toMatchObject({ level: "bad", source: "observed", derived: { value: 0, unit: "%" } });
    expect(finding.borderline).toBeUndefined();
  });

  test("a flag that raises leaves what is worse already", () => {
    const raised = (thickness: number) => found({ pads: { measured: { thickness }, flags: ["hard"] } });
    expect(raised(8)).toMatchObject({ level: "poor", source: "observed" });
    expect(raised(1)).toMatchObject({ level: "bad", source: "measured" });
  });

  test("a flag alone is a reading", () => {
    expect(found({ post: { flags: ["wrong_diameter"] } })).toMatchObject({
      level: "wrong",
      source: "observed",
    });
    expect(found({ pads: { flags: ["hard"] } }).level).toBe("poor");
  });

  test("within one reading error of a limit both levels are named", () => {
    const finding = found({ pads: { measured: { thickness: 1.6 } } });
    expect(finding.borderline).toEqual(["poor", "bad"]);
    expect(finding.note).toContain("limit between poor and bad: measure again");
  });

  test("other limits hold on the bikes they are for", () => {
    const disc = { ...STEEL_TOURER, brakeType: "disc-mechanical" } as const;
    expect(found({ pads: { measured: { thickness: 1.4 } } }).level).toBe("bad");
    expect(found({ pads: { measured: { thickness: 1.4 } } }, disc).level).toBe("poor");
  });

  test("safety follows the material where the table says so, and the note says why", () => {
    const aluminium = { ...STEEL_TOURER, frameMaterial: "aluminium" } as const;
    expect(found({ spacing: { level: "good" } }).safety).toBe("none");
    expect(found({ spacing: { level: "good" } }, aluminium)).toMatchObject({
      safety: "advisory",
      note: "It is good. Only steel may be sprung in.",
    });
  });

  test("the noise of decimal fractions does not cross a limit", () => {
    expect(found({ spacing: { measured: { spacing: 130.2, hub: 129.2 } } })).toMatchObject({
      level: "poor",
      derived: { value: 1 },
      note: expect.stringContaining("The spacing 130.2 mm, the hub 129.2 mm: 1 mm apart"),
    });
  });

  test("notes say which way and how far", () => {
    expect(found({ string: { measured: { left: 41, right: 43 } } }).note).toMatch(
      /^Rear end 1.7 mm to the drive side at the axle/,
    );
    expect(found({ string: { measured: { left: 43, right: 41 } } }).note).toMatch(
      /^Rear end 1.7 mm away from the drive side/,
    );
    expect(found({ string: { measured: { left: 41, right: 41 } } }).note).toMatch(/^Rear end in line/);
    expect(found({ post: { measured: { inserted: 60, required: 68 } } }).note).toMatch(
      /^8 mm short of the least of 68 mm/,
    );
    expect(found({ chain: { measured: { length24: 304.5 } } }).note).toMatch(/^0.1 % shorter than new/);
    expect(found({ spokes: { measured: { count: 2 } } }).note).toMatch(/^The count 2\. /);
  });
});

describe("front and rear", () => {
  test("are told apart where the check has wheels", () => {
    const { findings } = look({ spokes: { rear: { measured: { count: 4 } }, front: { level: "good" } } });
    expect(findings.map(({ position, level }) => [position, level])).toEqual([
      ["front", "good"],
      ["rear", "bad"],
    ]);
  });

  test("one reading speaks for both", () => {
    expect(found({ spokes: { level: "poor" } }).position).toBe("both");
  });

  test("a check without wheels refuses them", () => {
    expect(refused({ fork: { front: { level: "good" } } })).toMatchObject({
      code: "out-of-domain",
      pointer: "/observations/fork/front",
      requirement: expect.stringContaining("does not tell front and rear apart"),
    });
  });

  test("the wheel not looked at stays unseen", () => {
    const { unseen } = look({ spokes: { rear: { level: "good" } } });
    expect(unseen.find((one) => one.check === "spokes")).toMatchObject({
      check: "spokes",
      position: "front",
      probabilities: [0.7, 0.2, 0.1],
      acquittedBy: null,
    });
  });

  test("neither wheel, or a reading beside them, is refused", () => {
    expect(refused({ spokes: { front: undefined } }).pointer).toBe("/observations/spokes");
    expect(refused({ spokes: { front: { level: "good" }, level: "bad" } }).requirement).toContain(
      "nothing beside",
    );
  });
});

describe("what is refused", () => {
  test.each([
    [{ forks: { level: "good" } }, "unknown-id", "/observations/forks", "fork, spacing"],
    [{ "a/b~c": { level: "good" } }, "unknown-id", "/observations/a~1b~0c", "one of fork"],
    [{ constructor: { level: "good" } }, "unknown-id", "/observations/constructor", "one of fork"],
    [{ fork: { level: "worse" } }, "unknown-id", "/observations/fork/level", "good, poor, bad"],
    [
      { spokes: { front: { level: "x" } } },
      "unknown-id",
      "/observations/spokes/front/level",
      "good, poor, bad",
    ],
    [{ chain: { flags: ["rust"] } }, "unknown-id", "/observations/chain/flags/0", "rusted_stiff"],
    [{ fork: { flags: ["rust"] } }, "unknown-id", "/observations/fork/flags/0", "a check that has flags"],
    [
      { chain: { measured: { length: 305 } } },
      "unknown-id",
      "/observations/chain/measured/length",
      "length24",
    ],
    [
      { string: { measured: { left: 41 } } },
      "impossible-measurement",
      "/observations/string/measured/right",
      "measure again",
    ],
    [
      { string: { measured: { left: -1, right: 41 } } },
      "impossible-measurement",
      "/observations/string/measured/left",
      "0 to 150 mm",
    ],
    [
      { chain: { measured: { length24: 290 } } },
      "impossible-measurement",
      "/observations/chain/measured/length24",
      "count the pitches",
    ],
    [
      { chain: { measured: { length24: 400 } } },
      "impossible-measurement",
      "/observations/chain/measured/length24",
      "0 to 317 mm",
    ],
    [
      { chain: { measured: { length24: Number.NaN } } },
      "impossible-measurement",
      "/observations/chain/measured/length24",
      "0 to 317 mm",
    ],
    [
      { spokes: { measured: { count: 1.5 } } },
      "impossible-measurement",
      "/observations/spokes/measured/count",
      "a whole number",
    ],
    [
      { string: { measured: { left: 41, right: 41, headToAxle: 1000 } } },
      "impossible-measurement",
      "/observations/string/measured/headToSeatTube",
      "give both",
    ],
    [{ fork: { measured: { a: 1 } } }, "out-of-domain", "/observations/fork/measured", "good, poor, bad"],
    [{ fork: {} }, "out-of-domain", "/observations/fork", "a level"],
    [{ spokes: { rear: { flags: [] } } }, "out-of-domain", "/observations/spokes/rear", "measured values"],
  ])("%j: %s at %s, with what is allowed", (observations, code, pointer, allowed) => {
    const error = refused(observations);
    expect(error).toMatchObject({ code, pointer });
    expect(error.requirement).toContain(allowed);
  });
});

describe("a check that does not apply", () => {
  test("is ignored with the reason", () => {
    const coaster = { ...STEEL_TOURER, brakeType: "coaster" } as const;
    const { findings, ignored, unseen } = look({ pads: { level: "bad" } }, coaster);
    expect(findings).toEqual([]);
    expect(ignored).toEqual([
      {
        check: "pads",
        reason:
          "The pads does not apply to this bike: its brake type is coaster, the check is for rim-caliper, disc-mechanical.",
      },
    ]);
    expect(unseen.some((one) => one.check === "pads")).toBe(false);
  });
});

describe("the tyre's size from the description", () => {
  function sized(dimensions: Dimensions, observations: Observations = {}) {
    return look(observations, STEEL_TOURER, dimensions);
  }

  test("a marking or a diameter answers the check where nobody looked", () => {
    for (const dimensions of [{ tyreMarking: "37-590" }, { beadSeatDiameterMm: 590 }]) {
      const { findings, unseen } = sized(dimensions);
      expect(findings).toMatchObject([
        { check: "size", position: "both", level: "rare", source: "measured", derived: { value: 590 } },
      ]);
      expect(unseen.some((one) => one.check === "size")).toBe(false);
    }
    expect(sized({ tyreMarking: "700C tubular" }).findings[0]?.level).toBe("glued");
  });

  test("an observation stands, and is compared", () => {
    const { findings, mismatches } = sized({ beadSeatDiameterMm: 590 }, { size: { measured: { bsd: 559 } } });
    expect(findings.map((one) => one.level)).toEqual(["current"]);
    expect(mismatches).toMatchObject([{ diameters: [590, 559] }]);
  });

  test("findings stay in the order of the table of checks", () => {
    const { findings } = sized(
      { tyreMarking: "32-622" },
      { serial: { level: "good" }, fork: { level: "good" } },
    );
    expect(findings.map((one) => one.check)).toEqual(["fork", "size", "serial"]);
  });

  test("a tyre that is not the rim's size is a mismatch, with the shared name", () => {
    const { mismatches } = sized({ beadSeatDiameterMm: 559, tyreMarking: "26 x 1 3/8" });
    expect(mismatches).toHaveLength(1);
    expect(mismatches[0]?.diameters).toEqual([559, 590]);
    expect(mismatches[0]?.text).toContain("Both are called 26 in");
  });

  test("a marking with several meanings is settled by the rim, or told and not guessed", () => {
    expect(sized({ tyreMarking: "26 in", beadSeatDiameterMm: 584 })).toMatchObject({
      findings: [{ level: "current", derived: { value: 584 } }],
      mismatches: [],
      ignored: [],
    });
    expect(sized({ tyreMarking: "26 in", beadSeatDiameterMm: 622 }).mismatches).toHaveLength(1);
    const open = sized({ tyreMarking: "26 in" });
    expect(open.findings).toEqual([]);
    expect(open.ignored).toMatchObject([
      { check: "size", reason: expect.stringContaining("599, 597, 590, 584, 571, 559") },
    ]);
  });

  test("an unlisted marking is told, what is no marking is refused at its field", () => {
    expect(sized({ tyreMarking: "26 x 1 5/8" }).ignored[0]?.reason).toContain("no listed size has this name");
    expect(refused({}, { tyreMarking: "round" })).toMatchObject({
      code: "out-of-domain",
      pointer: "/find/tyreMarking",
    });
    expect(refused({}, { beadSeatDiameterMm: 9000 })).toMatchObject({
      code: "impossible-measurement",
      pointer: "/find/beadSeatDiameterMm",
    });
  });

  test("wheels of two sizes by design are no mismatch, two sizes of one name are", () => {
    const wheels = (front: number, rear: number) =>
      sized(
        { beadSeatDiameterMm: rear },
        { size: { front: { measured: { bsd: front } }, rear: { measured: { bsd: rear } } } },
      );
    expect(wheels(590, 559).mismatches.map((one) => one.diameters)).toContainEqual([590, 559]);
    expect(wheels(406, 622).mismatches.map((one) => one.diameters)).not.toContainEqual([406, 622]);
  });
});

describe("how much was looked at", () => {
  test("counts what applies, by group; one wheel, or a check that another cleared, is not made", () => {
    const inspection = look({
      fork: { level: "good" },
      brake: { level: "good" },
      spokes: { front: { level: "good" } },
    });
    expect(lookedAt(STEEL_TOURER, inspection, INDEX)).toEqual({
      made: 2,
      applicable: 10,
      groups: [
        { group: "frame-fork", made: 1, applicable: 4 },
        { group: "transmission", made: 0, applicable: 1 },
        { group: "wheels-tyres", made: 0, applicable: 2 },
        { group: "brakes", made: 1, applicable: 2 },
        { group: "paperwork", made: 0, applicable: 1 },
      ],
    });
  });

  test("a check that does not apply is not counted", () => {
    const coaster = { ...STEEL_TOURER, brakeType: "coaster" } as const;
    expect(lookedAt(coaster, look({}, coaster), INDEX)).toMatchObject({ made: 0, applicable: 9 });
  });
});
