import { describe, expect, test } from "vitest";
import { inspected } from "../realTables.ts";

function weights(...args: Parameters<typeof inspected>): number[] {
  return [...inspected(...args).history.weights];
}

describe("a check seen at its wheels", () => {
  test("speaks once, at the worse wheel", () => {
    const apart = { front: { level: "true" }, rear: { level: "bad" } };
    expect(weights({ "rim-lateral": apart })).toEqual(weights({ "rim-lateral": { level: "bad" } }));
    const both = { front: { level: "bad" }, rear: { level: "bad" } };
    expect(weights({ "rim-lateral": both })).toEqual(weights({ "rim-lateral": { level: "bad" } }));
  });

  test("speaks for the check where one wheel alone was seen, of the other wheel too", () => {
    const front = { "rim-lateral": { front: { level: "bad" } } };
    expect(weights(front)).toEqual(weights({ "rim-lateral": { level: "bad" } }));
    const rear = inspected(front).unseen.find(({ check }) => check === "rim-lateral")!;
    expect(rear.position).toBe("rear");
    expect(rear.probabilities[0]).toBeLessThan(rear.prior[0]!);
  });
});

describe("what gives no evidence of its own", () => {
  test("is a check that another acquits", () => {
    const { history, unseen } = inspected({ "hub-bearings": { level: "smooth" } });
    const cones = unseen.find(({ check }) => check === "hub-cones")!;
    expect(cones.acquittedBy).toBe("hub-bearings");
    expect(cones.probabilities).toEqual([1, 0, 0, 0]);
    expect([...cones.byClass]).toEqual(Array.from({ length: 64 }, (_, at) => (at % 4 === 0 ? 1 : 0)));
    expect(cones.prior[0]).toBeLessThan(1);
    expect(history.evidence.findings.map(({ check }) => check)).toEqual(["hub-bearings"]);
  });

  test("is a paper, and a check that no factor shifts", () => {
    const before = weights({});
    const seen = {
      serial: { level: "removed" },
      ownership: { level: "none" },
      "dropout-spacing": { level: "far" },
    };
    expect(weights(seen)).toEqual(before);
    const { unseen } = inspected({ rust: { level: "holed" } });
    for (const id of ["serial", "ownership", "dropout-spacing"]) {
      const one = unseen.find(({ check }) => check === id)!;
      if (one.acquittedBy === null) expect(one.probabilities).toEqual(one.prior);
    }
  });

  test("is an observation on a check that does not apply", () => {
    const { history, ignored, unseen } = inspected(
      { rotor: { level: "worn" } },
      { brakeType: "rim-caliper" },
    );
    expect(ignored.map(({ check }) => check)).toEqual(["rotor"]);
    expect(history.evidence.findings).toEqual([]);
    expect(unseen.map(({ check }) => check)).not.toContain("rotor");
  });
});

describe("a symptom", () => {
  const bad = { "brake-function": { level: "none" } };
  const pads = { "brake-pads": { level: "worn" } };
  const rim = { brakeType: "rim-caliper" } as const;

  test("counts while no cause of it was found", () => {
    expect(inspected(bad, rim).history.factors.neglect).toBeGreaterThan(
      inspected({}, rim).history.factors.neglect,
    );
    const sound = { "brake-pads": { level: "ok" } };
    expect(weights({ ...bad, ...sound }, rim)).not.toEqual(weights(sound, rim));
  });

  test("counts no more once a known cause was found, which speaks in its place", () => {
    expect(weights({ ...bad, ...pads }, rim)).toEqual(weights(pads, rim));
    const rear = { "brake-pads": { rear: { level: "worn" } } };
    expect(weights({ ...bad, ...rear }, rim)).toEqual(weights(rear, rim));
  });

  test("counts where it is good, whatever was found", () => {
    const strong = { "brake-function": { level: "strong" } };
    expect(inspected({ ...strong, ...pads }, rim).history.factors.neglect).toBeLessThan(
      inspected(pads, rim).history.factors.neglect,
    );
  });

  test("counts where what cures it says nothing of the past: a tubular tyre does not perish of being one", () => {
    const perished = { "tyre-condition": { level: "perished" } };
    const tubular = { "tyre-size": { level: "tubular" } };
    expect(weights({ ...perished, ...tubular })).toEqual(weights(perished));
  });
});
