import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ATTRIBUTE_VALUES, ERAS, holds, KEPT } from "../../../../worker/engine/bicycle.ts";
import { settleAttributes } from "../../../../worker/engine/inspection/attributeDefaults.ts";
import type { DescribedAttributes } from "../../../../worker/engine/inspection/find.ts";
import { FACTORS } from "../../../../worker/engine/inspection/history/factor.ts";
import { inspect } from "../../../../worker/engine/inspection/inspect.ts";
import { readCatalogue } from "../../../../worker/tables.ts";
import { INDEX, inspected } from "../realTables.ts";

/** The laws of the hidden history, over the product's own tables. */

const { history, priors, priorModifiers } = readCatalogue().inspection;
const CELLS = ERAS.flatMap((era) => KEPT.map((kept) => ({ era, kept })));
const BIKES: readonly Partial<DescribedAttributes>[] = [
  {},
  { frameMaterial: "aluminium", category: "mountain-suspension", postMaterial: "aluminium" },
  { frameMaterial: "carbon", category: "road-racing", brakeType: "disc-hydraulic", componentTier: "top" },
  { category: "childrens", componentTier: "entry" },
  { category: "city-roadster", drivetrain: "hub-gear", brakeType: "drum", rimMaterial: "steel" },
];

/** The catalogue's chance with the odds of each modifier's levels multiplied, by hand. */
function cataloguePrior(check: string, attributes: ReturnType<typeof settleAttributes>): number[] {
  const { levels } = INDEX.byId.get(check)!.check;
  const { probabilities } = priors.find(
    (row) => row.check === check && row.era === attributes.era && row.kept === attributes.kept,
  )!;
  let chances = [...probabilities];
  for (const { check: of, fromLevel, when, odds } of priorModifiers) {
    if (of !== check || !holds(when, attributes)) continue;
    const from = levels.findIndex(({ id }) => id === fromLevel);
    const before = chances.slice(from).reduce((a, b) => a + b, 0);
    const after = (odds * before) / (odds * before + 1 - before);
    chances = chances.map((one, at) =>
      at >= from ? (one * after) / before : (one * (1 - after)) / (1 - before),
    );
  }
  return chances;
}

function chanceFrom(check: string, level: string, { unseen }: ReturnType<typeof inspected>): number {
  const rank = INDEX.byId.get(check)!.ranks.get(level)!;
  const one = unseen.find((row) => row.check === check)!;
  return one.probabilities.slice(rank).reduce((a, b) => a + b, 0);
}

describe("with nothing seen", () => {
  test.each(CELLS)("the chances are the catalogue's after modifiers: $era, $kept", (cell) => {
    for (const bike of BIKES) {
      const attributes = settleAttributes(
        { category: "touring", frameMaterial: "steel", componentTier: "mid", ...bike, ...cell },
        INDEX.attributeDefaults,
      );
      const { unseen, history: past } = inspect(attributes, {}, {}, INDEX);
      for (const { check, probabilities, prior, acquittedBy } of unseen) {
        if (acquittedBy === null && probabilities[0] === 1) continue;
        for (const [rank, chance] of cataloguePrior(check, attributes).entries()) {
          expect(Math.abs(probabilities[rank]! - chance), check).toBeLessThan(1e-9);
          expect(Math.abs(prior[rank]! - chance), check).toBeLessThan(1e-9);
        }
      }
      for (const { id, chance } of history.factors)
        expect(past.factors[id]).toBeCloseTo(chance[attributes.kept], 12);
    }
  });
});

describe("what is seen", () => {
  test("on rust raises the chance of a stuck post, and a bent bar that of a bent fork", () => {
    const nothing = inspected({});
    expect(chanceFrom("seatpost-free", "stuck", inspected({ rust: { level: "pitted" } }))).toBeGreaterThan(
      1.3 * chanceFrom("seatpost-free", "stuck", nothing),
    );
    expect(
      chanceFrom("fork-alignment", "bent", inspected({ "bar-stem-cracks": { level: "bent" } })),
    ).toBeGreaterThan(1.3 * chanceFrom("fork-alignment", "bent", nothing));
    expect(chanceFrom("seatpost-free", "stuck", inspected({ rust: { level: "none" } }))).toBeLessThan(
      chanceFrom("seatpost-free", "stuck", nothing),
    );
  });

  test("alone, at a worse level, never makes a factor that its check speaks of less likely", () => {
    for (const { check: id, ...loadings } of history.loadings) {
      const { check } = INDEX.byId.get(id)!;
      if (!check.ordered) continue;
      for (const cell of CELLS) {
        const bike = bikeFor(id, cell);
        const pasts = check.levels.map(
          (level) => inspect(bike, {}, { [id]: { level: level.id } }, INDEX).history,
        );
        for (const factor of FACTORS.filter((one) => loadings[one] !== undefined)) {
          for (const [rank, past] of pasts.entries())
            if (rank > 0)
              expect(past.factors[factor], `${id} ${factor} ${rank}`).toBeGreaterThanOrEqual(
                pasts[rank - 1]!.factors[factor] - 1e-12,
              );
        }
      }
    }
  });

  const bikes = fc
    .record({
      category: fc.constantFrom(...ATTRIBUTE_VALUES.category),
      era: fc.constantFrom(...ERAS),
      kept: fc.constantFrom(...KEPT),
      frameMaterial: fc.constantFrom(...ATTRIBUTE_VALUES.frameMaterial),
      componentTier: fc.constantFrom(...ATTRIBUTE_VALUES.componentTier),
      brakeType: fc.constantFrom(...ATTRIBUTE_VALUES.brakeType),
    })
    .map((one) => settleAttributes(one, INDEX.attributeDefaults));
  const observations = fc
    .subarray(INDEX.checks.map(({ check }) => check))
    .chain((some) =>
      fc.record(
        Object.fromEntries(
          some.map((check) => [check.id, fc.constantFrom(...check.levels.map(({ id }) => ({ level: id })))]),
        ),
      ),
    );

  test("leaves weights that sum to 1, and chances of every unseen check in every class that do", () => {
    fc.assert(
      fc.property(bikes, observations, (attributes, seen) => {
        const { history: past, unseen } = inspect(attributes, {}, seen, INDEX);
        expect(past.weights).toHaveLength(16);
        expect(past.weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        for (const [f, factor] of FACTORS.entries()) {
          const sum = past.weights.reduce(
            (total, weight, z) => (Math.floor(z / 2 ** f) % 2 ? total + weight : total),
            0,
          );
          expect(past.factors[factor]).toBeCloseTo(sum, 12);
        }
        for (const { byClass, probabilities } of unseen) {
          const levels = probabilities.length;
          expect(byClass).toHaveLength(16 * levels);
          for (const [rank, chance] of probabilities.entries()) {
            const average = past.weights.reduce(
              (total, weight, z) => total + weight * byClass[z * levels + rank]!,
              0,
            );
            expect(Math.abs(average - chance)).toBeLessThan(1e-12);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** A bike that has what the check looks at. */
function bikeFor(check: string, cell: (typeof CELLS)[number]) {
  const asked = INDEX.byId
    .get(check)!
    .check.appliesTo.map(({ attribute, isOneOf }) => [attribute, isOneOf[0]]);
  return settleAttributes(
    {
      category: "touring",
      frameMaterial: "steel",
      componentTier: "mid",
      ...(Object.fromEntries(asked) as Partial<DescribedAttributes>),
      ...cell,
    },
    INDEX.attributeDefaults,
  );
}
