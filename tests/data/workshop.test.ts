import { describe, expect, test } from "vitest";
import { holds, TIERS } from "../../worker/engine/bicycle.ts";
import { bikesToldApart } from "../../worker/tables/bikesToldApart.ts";
import { readCatalogue, SHIPPED_TABLES } from "../../worker/tables.ts";

const { service, inspection, value } = readCatalogue();
const operation = (id: string) => service.operations.find((row) => row.id === id)!;
const part = (id: string) => service.parts.find((row) => row.id === id)!;

describe("prices", () => {
  test("a better tier never costs less", () => {
    for (const { id, prices } of service.parts) {
      for (const table of [prices.new, prices.used ?? prices.new]) {
        for (let at = 1; at < TIERS.length; at++) {
          const [below, own] = [table[TIERS[at - 1]!], table[TIERS[at]!]];
          for (const point of ["low", "typical", "high"] as const) {
            expect(own[point], `${id} ${TIERS[at]} ${point}`).toBeGreaterThanOrEqual(below[point]);
          }
        }
      }
    }
  });

  test("a used part never costs more than a new one", () => {
    const used = service.parts.filter(({ prices }) => prices.used !== null);
    expect(used.length).toBeGreaterThan(30);
    for (const { id, prices } of used) {
      for (const tier of TIERS)
        expect(prices.used![tier].typical, `${id} ${tier}`).toBeLessThan(prices.new[tier].typical);
    }
  });

  // Common practice, no source: wear and what the hand relies on is bought new, dear and durable pieces used.
  test("wear parts are new and one tier below, safety parts new, dear and durable ones used", () => {
    for (const id of ["tyre", "chain", "rim-pads", "brake-inner", "bar", "stem"]) {
      expect(part(id).buy, id).toEqual({ state: "new", tiersBelow: 1 });
    }
    for (const id of ["fork-rigid", "hydraulic-set", "caliper-rim", "rotor", "brake-lever"]) {
      expect(part(id).buy, id).toEqual({ state: "new", tiersBelow: 0 });
    }
    for (const id of ["wheel-rear", "crankset", "rear-mech", "lever-integrated"]) {
      expect(part(id).buy, id).toEqual({ state: "used", tiersBelow: 0 });
    }
  });
});

describe("operations", () => {
  test("what cures a level that blocks riding in brakes, steering or wheels is safety-critical", () => {
    const groups = ["brakes", "steering", "wheels-tyres"];
    const blocking = inspection.checks
      .filter(({ group }) => groups.includes(group))
      .flatMap(({ id, levels }) =>
        levels.filter(({ safety }) => safety === "block").map((level) => `${id}:${level.id}`),
      );
    const cures = service.remedies.filter(({ check, level }) => blocking.includes(`${check}:${level}`));
    expect(cures.length).toBeGreaterThan(30);
    for (const { check, level, options } of cures) {
      for (const option of options) {
        const critical = option.some((id) => operation(id).safetyCritical);
        expect(critical, `${check}:${level} by ${option.join(" and ")}`).toBe(true);
      }
    }
  });

  test("only what is sold whole is photographed and handed over, and what is broken up is stripped", () => {
    const always = (course: string) =>
      service.operations
        .filter(({ alwaysIn }) => (alwaysIn as readonly string[]).includes(course))
        .map(({ id }) => id);
    for (const course of ["restore", "make-safe", "sell-as-found"]) {
      expect(always(course), course).toEqual(
        expect.arrayContaining(["query-serial", "photograph", "sell-handover"]),
      );
    }
    expect(always("break-for-parts")).toEqual(["query-serial", "record-state", "strip-for-parts", "dispose"]);
    expect(always("leave")).toEqual(["dispose"]);
    expect(service.operations.filter(({ selling }) => selling).map(({ id }) => id)).toEqual([
      "photograph",
      "sell-handover",
    ]);
  });

  test("work that may end the frame or the right to sell is a moment to choose again", () => {
    const ending = service.operations.filter(({ failure }) => failure !== null && failure.ends !== null);
    expect(ending.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["query-serial", "decide-crack", "cold-set", "carbon-inspect"]),
    );
    for (const { id, failure } of ending) expect(failure!.redecide, id).toBe(true);
  });

  test("wheel and brake work names the steps of both ends, so that one end may be done alone", () => {
    const steps = new Map(service.steps.map((step) => [step.id, step]));
    for (const { id, per, steps: own } of service.operations.filter((row) => row.per !== "bike")) {
      const ends = new Set(own.map((step) => steps.get(step)!.position).filter((end) => end !== null));
      if (ends.size > 0) expect([...ends].sort(), `${id} ${per}`).toEqual(["front", "rear"]);
    }
  });

  test("the weather's toll: a worse kept bike never has a smaller chance of failure", () => {
    const kinds = ["indoors", "sheltered", "outdoors"];
    for (const { id, failure } of service.operations) {
      const rows = failure?.chances ?? [];
      const materials = new Set(
        rows.map(({ when }) => JSON.stringify(when.filter(({ attribute }) => attribute !== "kept"))),
      );
      for (const material of materials) {
        const same = rows.filter(
          ({ when, at }) =>
            at.length === 0 &&
            JSON.stringify(when.filter(({ attribute }) => attribute !== "kept")) === material,
        );
        const order = same.map(({ when }) =>
          kinds.indexOf(when.find(({ attribute }) => attribute === "kept")?.isOneOf[0] ?? "outdoors"),
        );
        expect(order, id).toEqual([...order].sort());
        const chances = same.map(({ probability }) => probability);
        expect(chances, id).toEqual([...chances].sort((a, b) => a - b));
      }
    }
  });

  test("a stuck post is harder to free where aluminium sits in steel than where steel does", () => {
    const chances = operation("free-seatpost").failure!.chances;
    const steel = chances.filter(({ when }) =>
      when.some(({ attribute, isOneOf }) => attribute === "postMaterial" && isOneOf.includes("steel")),
    );
    expect(steel.map(({ probability }) => probability)).toEqual([0.15, 0.25, 0.35]);
    expect(chances.slice(-3).map(({ probability }) => probability)).toEqual([0.25, 0.35, 0.5]);
  });

  // Common practice, no source; customary workshop ranges, from memory. The marked value rules.
  test.each([
    ["free-stem", 20, 29],
    ["replace-bar", 5, 9],
    ["replace-seatpost", 5, 7],
    ["replace-crank", 35, 44],
    ["new-pedals", 35, 40],
    ["overhaul-calipers", 6, 10],
  ])("%s carries the customary torque", (id, from, to) => {
    expect(operation(id).torque).toMatchObject({ from, to });
  });
});

describe("the parts of a bike", () => {
  test("findings never spoil more than the whole, on any bike", () => {
    const appliesTo = new Map(inspection.checks.map((check) => [check.id, check.appliesTo]));
    const checks = [...new Set(value.parts.spoiled.map(({ check }) => check))];
    const shareOf = (check: string) =>
      Math.max(...value.parts.spoiled.filter((row) => row.check === check).map(({ share }) => share));
    const bikes = bikesToldApart(checks.flatMap((check) => appliesTo.get(check)!));
    expect(bikes.length).toBeGreaterThan(10);
    for (const bike of bikes) {
      const concerned = checks.filter((check) => holds(appliesTo.get(check)!, bike));
      const total = concerned.reduce((sum, check) => sum + shareOf(check), 0);
      expect(total, JSON.stringify(bike)).toBeLessThanOrEqual(1 + 1e-9);
    }
  });
});

describe("wording", () => {
  test("no text of any table promises, grades or shouts", () => {
    const texts = [...textsIn(SHIPPED_TABLES)];
    expect(texts.length).toBeGreaterThan(1000);
    const offending = texts.filter((text) =>
      /\b(safe|grades?|excellent|guaranteed?|scores?|deals?)\b|!/i.test(text.replaceAll("make-safe", "")),
    );
    expect(offending).toEqual([]);
  });
});

function* textsIn(node: unknown): Generator<string> {
  if (typeof node === "string") yield node;
  else if (typeof node === "object" && node !== null)
    for (const inner of Object.values(node)) yield* textsIn(inner);
}
