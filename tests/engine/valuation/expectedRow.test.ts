import { describe, expect, test } from "vitest";
import { spreadMultiple } from "../../../worker/engine/valuation/bikeStart.ts";
import { expectedRow } from "../../../worker/engine/valuation/expectedRow.ts";
import type { SaleDescription } from "../../../worker/engine/valuation/saleDescription.ts";
import type { KnownDescription } from "../../../worker/engine/valuation/unknowns.ts";
import { denseRow } from "../../../worker/engine/valuation/valueBelief.ts";
import { addMarket, valueRow } from "../../../worker/engine/valuation/valueRow.ts";
import { MODEL, PRIOR } from "./demoModel.ts";
import { plainSale } from "./plainSale.ts";

const { layout, coefficients } = MODEL;
const { shares } = PRIOR;
const rowOf = (known: KnownDescription) => expectedRow(layout, coefficients, shares, known);
const effect = (x: ArrayLike<number>) =>
  Array.from(x).reduce((sum, value, column) => sum + value * coefficients[column]!, 0);

type Weighted = readonly [SaleDescription, number];

/** Every bike that a description may stand for, one by one, with valueRow alone: no shortcut shared with the code. */
function everyBike(
  bike: SaleDescription,
  open: readonly ((sale: SaleDescription) => Weighted[])[],
): Weighted[] {
  return open.reduce<Weighted[]>(
    (bikes, spread) =>
      bikes.flatMap(([sale, chance]) => spread(sale).map(([one, share]): Weighted => [one, share * chance])),
    [[bike, 1]],
  );
}

function moments(bikes: readonly Weighted[]) {
  const x = new Float64Array(layout.names.length);
  let [mean, square, spread] = [0, 0, 0];
  for (const [sale, chance] of bikes) {
    const row = denseRow(addMarket(valueRow(layout, sale), layout, sale.attributes.category), x.length);
    row.forEach((value, column) => {
      x[column]! += chance * value;
    });
    const one = effect(row);
    mean += chance * one;
    square += chance * one * one;
    spread += chance * spreadMultiple(layout, sale) ** 2;
  }
  return { x, variance: square - mean * mean, squaredSpread: spread };
}

const entries = <Level extends string>(of: Readonly<Record<Level, number>>) =>
  Object.entries(of) as [Level, number][];
const attribute =
  <Name extends keyof SaleDescription["attributes"]>(name: Name, of: Readonly<Record<string, number>>) =>
  (sale: SaleDescription): Weighted[] =>
    entries(of).map(([level, share]) => [
      { ...sale, attributes: { ...sale.attributes, [name]: level } },
      share,
    ]);
const PRESENTED = [
  (sale: SaleDescription) =>
    entries(shares.presentation).map(([presentation, share]): Weighted => [{ ...sale, presentation }, share]),
  (sale: SaleDescription) =>
    entries(shares.papers).map(([papers, share]): Weighted => [{ ...sale, papers }, share]),
];

describe("the row of a bike of which not all is known", () => {
  const { attributes } = plainSale();

  test("is the bike's own where all that counts is known, with the variance of how it was shown alone", () => {
    const sale = plainSale(
      { category: "touring", era: "1980s", componentTier: "upper", sizeClass: "small", place: "city" },
      { state: { kind: "does-not-ride" }, asFound: true, desirability: 0.4, originality: 1, month: 11 },
    );
    const { attributes: bike, desirability, originality } = sale;
    const row = rowOf({ attributes: bike, state: "does-not-ride", desirability, originality, month: 11 });
    const known = addMarket(valueRow(layout, sale), layout, "touring");
    expect(Array.from(row.x)).toEqual(Array.from(denseRow(known, row.x.length)));
    expect(row.variance).toBeCloseTo(0, 14);
    expect(row.rides).toBe(0);
  });

  test("is the mean over every bike it may be, and its variance is theirs, counted one by one", () => {
    const known: KnownDescription = {
      attributes: { category: "mountain-suspension", era: "2000s" },
      originality: 0.8,
      desirability: 0,
      month: 5,
    };
    const states = (sale: SaleDescription): Weighted[] =>
      entries(shares.state).flatMap(([kind, share]): Weighted[] =>
        kind === "rides"
          ? layout.design.conditionKnots.map((condition, index) => [
              { ...sale, state: { kind, condition } },
              share * shares.condition[index]!,
            ])
          : [[{ ...sale, state: { kind }, asFound: true }, share]],
      );
    const bikes = everyBike(
      plainSale({ category: "mountain-suspension", era: "2000s" }, { originality: 0.8, month: 5 }),
      [
        attribute("componentTier", shares.componentTier),
        attribute("frameMaterial", shares.frameMaterial["2000s"]),
        attribute("sizeClass", shares.sizeClass),
        attribute("place", shares.place),
        states,
        ...PRESENTED,
      ],
    );
    const counted = moments(bikes);
    const row = rowOf(known);
    row.x.forEach((value, column) => {
      expect(value, layout.names[column]).toBeCloseTo(counted.x[column]!, 12);
    });
    expect(row.variance).toBeCloseTo(counted.variance, 10);
    expect(row.squaredSpread).toBeCloseTo(counted.squaredSpread, 12);
    expect(row.rides).toBeCloseTo(shares.state.rides, 12);
  });

  test("where fashion may hold, differs from that count by its tie to what was left open, a little", () => {
    const known: KnownDescription = {
      attributes: { ...attributes, category: "city-roadster", stepThrough: undefined, drivetrain: undefined },
      condition: 0.75,
      originality: 0.8,
      desirability: 0,
      month: 7,
    };
    const bikes = everyBike(
      plainSale({ category: "city-roadster" }, { state: { kind: "rides", condition: 0.75 } }),
      [
        attribute("stepThrough", shares.stepThrough),
        attribute("drivetrain", shares.drivetrain),
        ...PRESENTED,
      ],
    );
    const counted = moments(bikes);
    const row = rowOf(known);
    expect(effect(row.x)).toBeCloseTo(effect(counted.x), 12);
    expect(row.variance).toBeCloseTo(counted.variance, 10);
  });

  test("knows less the less is said", () => {
    const said = [
      { attributes: {} },
      { attributes: { category: "hybrid" as const } },
      { attributes: { category: "hybrid" as const, era: "2010s" as const } },
      { attributes: { category: "hybrid" as const, era: "2010s" as const, componentTier: "mid" as const } },
      { attributes, condition: 0.75 },
    ].map((known) => rowOf(known).variance);
    for (let more = 1; more < said.length; more++) expect(said[more]!).toBeLessThan(said[more - 1]!);
  });
});
