import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ATTRIBUTE_VALUES } from "../../../worker/engine/bicycle.ts";
import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import type { Check, MeasuredInput } from "../../../worker/engine/inspection/check.ts";
import type { DescribedAttributes } from "../../../worker/engine/inspection/find.ts";
import { inspect } from "../../../worker/engine/inspection/inspect.ts";
import { lookedAt } from "../../../worker/engine/inspection/looked.ts";
import type { Observation, Observations, Reading } from "../../../worker/engine/inspection/observation.ts";
import { INDEX } from "./realTables.ts";

/** The laws of the inspection, over the product's own tables and any bike that can be described. */

const described: fc.Arbitrary<DescribedAttributes> = fc.record({
  category: fc.constantFrom(...ATTRIBUTE_VALUES.category),
  era: fc.constantFrom(...ATTRIBUTE_VALUES.era),
  frameMaterial: fc.constantFrom(...ATTRIBUTE_VALUES.frameMaterial),
  componentTier: fc.constantFrom(...ATTRIBUTE_VALUES.componentTier),
  kept: fc.constantFrom(...ATTRIBUTE_VALUES.kept),
  brakeType: fc.constantFrom(...ATTRIBUTE_VALUES.brakeType),
});
const bikes = described.map((one) => settleAttributes(one, INDEX.attributeDefaults));

/** A possible value of one input; a chain's length near new, since a shorter one is refused. */
function possibleValue({ unit, min, max }: MeasuredInput, check: Check): fc.Arbitrary<number> {
  const from = check.measurement!.derivation.kind === "elongation" ? 303 : min;
  return unit === "count"
    ? fc.integer({ min, max })
    : fc.integer({ min: Math.ceil(from * 100), max: Math.floor(max * 100) }).map((n) => n / 100);
}

function readings(check: Check): fc.Arbitrary<Reading> {
  const level = fc.constantFrom(...check.levels.map((one) => one.id)).map((id) => ({ level: id }));
  const { measurement } = check;
  if (measurement === null) return level;
  const required = measurement.inputs.filter((one) => !one.optional);
  const values = fc.record(Object.fromEntries(required.map((one) => [one.id, possibleValue(one, check)])));
  const flags = fc.subarray(measurement.flags.map((one) => one.id));
  return fc.oneof(level, fc.record({ measured: values, flags }));
}

function observationOf(check: Check): fc.Arbitrary<Observation> {
  const one = readings(check);
  return check.perWheel
    ? fc.oneof(one, fc.record({ front: one, rear: one }), fc.record({ front: one }))
    : one;
}

const observed: fc.Arbitrary<Observations> = fc
  .subarray([...INDEX.checks])
  .chain((some) => fc.record(Object.fromEntries(some.map(({ check }) => [check.id, observationOf(check)]))));

const measuredChecks = INDEX.checks.map((one) => one.check).filter((check) => check.measurement !== null);
const ordered = measuredChecks.filter((check) => check.ordered);

/** The finding's rank for one reading on a bike where the check applies. */
function rankOf(check: Check, reading: Reading): number {
  const attributes = settleAttributes(
    {
      category: "touring",
      era: "1990s",
      frameMaterial: "steel",
      componentTier: "mid",
      brakeType: check.id === "rotor" ? "disc-mechanical" : "rim-caliper",
      drivetrain: "derailleur",
      steering: "quill",
      rimMaterial: "aluminium",
    },
    INDEX.attributeDefaults,
  );
  const { findings } = inspect(attributes, {}, { [check.id]: reading }, INDEX);
  return findings[0]!.rank;
}

describe("the laws of the inspection", () => {
  test("every check is either found, unseen or does not apply; what applies and was seen is not unseen", () => {
    fc.assert(
      fc.property(bikes, observed, (attributes, observations) => {
        const inspection = inspect(attributes, {}, observations, INDEX);
        const looked = lookedAt(attributes, inspection, INDEX);
        const whole = new Set(inspection.unseen.map((one) => one.check));
        expect(looked.made + whole.size).toBe(looked.applicable);
        const answered = new Set([
          ...inspection.findings.map((one) => one.check),
          ...inspection.ignored.map((one) => one.check),
        ]);
        expect([...answered].sort()).toEqual(Object.keys(observations).sort());
      }),
    );
  });

  test("the chances of every unseen check sum to 1 and none is negative", () => {
    fc.assert(
      fc.property(bikes, observed, (attributes, observations) => {
        for (const { probabilities } of inspect(attributes, {}, observations, INDEX).unseen) {
          expect(probabilities.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          expect(Math.min(...probabilities)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test("the same request gives the same bytes", () => {
    fc.assert(
      fc.property(bikes, observed, (attributes, observations) => {
        const once = JSON.stringify(inspect(attributes, {}, observations, INDEX));
        const reversed = Object.fromEntries(Object.entries(observations).reverse());
        expect(JSON.stringify(inspect(attributes, {}, reversed, INDEX))).toBe(once);
      }),
    );
  });

  test("a flag never improves a level", () => {
    const flagged = fc
      .constantFrom(...ordered.filter((check) => check.measurement!.flags.length > 0))
      .chain((check) =>
        fc.tuple(
          fc.constant(check),
          readings(check),
          fc.constantFrom(...check.measurement!.flags.map((flag) => flag.id)),
        ),
      );
    fc.assert(
      fc.property(flagged, ([check, reading, flag]) => {
        const with_ = { ...reading, flags: [...(reading.flags ?? []), flag] };
        expect(rankOf(check, with_)).toBeGreaterThanOrEqual(rankOf(check, reading));
      }),
    );
  });

  test("a measurement moved to the worse side never gives a better level", () => {
    const single = fc
      .constantFrom(
        ...ordered.filter((check) => ["value", "elongation"].includes(check.measurement!.derivation.kind)),
      )
      .chain((check) => {
        const input = check.measurement!.inputs[0]!;
        return fc.tuple(fc.constant(check), possibleValue(input, check), possibleValue(input, check));
      });
    fc.assert(
      fc.property(single, ([check, one, two]) => {
        const { inputs, thresholds } = check.measurement!;
        const rank = (value: number) => rankOf(check, { measured: { [inputs[0]!.id]: value } });
        const lowestIsWorst = check.levels.findIndex((level) => level.id === thresholds[0]!.level) > 0;
        const [milder, worse] = one < two !== lowestIsWorst ? [one, two] : [two, one];
        expect(rank(worse)).toBeGreaterThanOrEqual(rank(milder));
      }),
      { numRuns: 500 },
    );
  });

  test("strings further apart, a hub further from its frame, or a post drawn further out never gives a better level", () => {
    const paired = fc
      .constantFrom("rear-alignment", "dropout-spacing", "seatpost-insertion", "stem-insertion")
      .chain((id) => {
        const check = INDEX.byId.get(id)!.check;
        const distance = fc.integer({ min: 0, max: 400 }).map((n) => n / 20);
        return fc.tuple(fc.constant(check), distance, distance);
      });
    fc.assert(
      fc.property(paired, ([check, one, two]) => {
        const [near, far] = [Math.min(one, two), Math.max(one, two)];
        const [a, b] = check.measurement!.inputs.map((input) => input.id);
        const rank = (gap: number) => rankOf(check, { measured: { [a!]: 100 - gap, [b!]: 100 } });
        expect(rank(far)).toBeGreaterThanOrEqual(rank(near));
      }),
    );
  });

  test("front and rear given equal come to the same level as once for both", () => {
    const perWheel = INDEX.checks.map((one) => one.check).filter((check) => check.perWheel);
    const cases = fc
      .constantFrom(...perWheel)
      .chain((check) => fc.tuple(fc.constant(check), readings(check)));
    fc.assert(
      fc.property(bikes, cases, (attributes, [check, reading]) => {
        const once = inspect(attributes, {}, { [check.id]: reading }, INDEX);
        const apart = inspect(attributes, {}, { [check.id]: { front: reading, rear: reading } }, INDEX);
        const level = once.findings[0]?.level;
        expect(apart.findings.map((one) => one.level)).toEqual(level === undefined ? [] : [level, level]);
        expect(apart.unseen).toEqual(once.unseen);
      }),
    );
  });

  test("looking at one more check leaves fewer unseen", () => {
    fc.assert(
      fc.property(bikes, observed, (attributes, observations) => {
        const before = inspect(attributes, {}, observations, INDEX);
        const next = before.unseen.find((one) => one.position === undefined);
        fc.pre(next !== undefined);
        const level = INDEX.byId.get(next.check)!.check.levels[0]!.id;
        const after = inspect(attributes, {}, { ...observations, [next.check]: { level } }, INDEX);
        expect(after.unseen.length).toBe(before.unseen.length - 1);
      }),
    );
  });
});
