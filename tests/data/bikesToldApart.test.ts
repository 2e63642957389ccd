import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ATTRIBUTE_VALUES,
  type AttributeName,
  type Attributes,
  type Condition,
  holds,
} from "../../worker/engine/bicycle.ts";
import { bikesToldApart } from "../../worker/tables/bikesToldApart.ts";

const NAMED: readonly AttributeName[] = ["frameMaterial", "brakeType", "kept"];
const PLAIN = bikesToldApart([])[0]!;

/** Every bike in the named attributes. */
const ALL: readonly Attributes[] = NAMED.reduce<readonly Attributes[]>(
  (bikes, name) =>
    bikes.flatMap((bike) => ATTRIBUTE_VALUES[name].map((value) => ({ ...bike, [name]: value }))),
  [PLAIN],
);

const condition: fc.Arbitrary<Condition> = fc
  .constantFrom(...NAMED)
  .chain((attribute) =>
    fc.subarray([...ATTRIBUTE_VALUES[attribute]]).map((isOneOf) => ({ attribute, isOneOf })),
  );

function outcomes(bikes: readonly Attributes[], conditions: readonly Condition[]): readonly string[] {
  return bikes.map((bike) => conditions.map((one) => (holds([one], bike) ? "1" : "0")).join(""));
}

describe("bikes told apart by conditions", () => {
  test("show every way in which the conditions can come out on all bikes, each once", () => {
    fc.assert(
      fc.property(fc.array(condition, { maxLength: 6 }), (conditions) => {
        const shown = outcomes(bikesToldApart(conditions), conditions);
        expect([...shown].sort()).toEqual([...new Set(outcomes(ALL, conditions))].sort());
      }),
    );
  });

  test("no condition tells any two apart", () => {
    expect(bikesToldApart([])).toHaveLength(1);
  });
});
