import { describe, expect, test } from "vitest";
import { spreadMultiple } from "../../../worker/engine/valuation/bikeStart.ts";
import type { Comparable } from "../../../worker/engine/valuation/comparable.ts";
import { influences } from "../../../worker/engine/valuation/influence.ts";
import { learnFromSales, readComparables } from "../../../worker/engine/valuation/learnFromSales.ts";
import { predict } from "../../../worker/engine/valuation/prediction.ts";
import type { SaleDescription } from "../../../worker/engine/valuation/saleDescription.ts";
import { compileModel, type ValueModel } from "../../../worker/engine/valuation/valueModel.ts";
import { FITTED, PRIOR } from "../../engine/valuation/demoModel.ts";
import { plainSale } from "../../engine/valuation/plainSale.ts";

/** Known as good as exactly. */
const PINNED = 1e7;

/**
 * A value model in which nothing can be learned but this very model's difference: everything else is known, and every bike is shown plainly with a bill of
 * sale, so that a comparable of which all is told leaves nothing to be averaged over.
 */
function sameModelOnly(betweenModels: number, known = true): ValueModel {
  const shares = known
    ? {
        ...PRIOR.shares,
        presentation: { full: 0, plain: 1, poor: 0 },
        papers: { receipt: 0, bill: 1, none: 0 },
      }
    : PRIOR.shares;
  const prior = {
    ...PRIOR,
    betweenModels,
    marketSd: 1 / PINNED,
    marketOfCategorySd: 1 / PINNED,
    asked: { ...PRIOR.asked, sd: 1 / PINNED },
    shares,
  };
  const squareRootInformation = FITTED.squareRootInformation.map((entry) => PINNED * entry);
  return compileModel({ ...FITTED, squareRootInformation }, prior);
}

function soldAs({ attributes, state, originality, desirability, month }: SaleDescription): Comparable {
  return {
    price: 1,
    kind: "paid",
    ageDays: 0,
    likeThis: true,
    attributes,
    state: state.kind,
    condition: state.kind === "rides" ? state.condition : undefined,
    originality,
    desirability,
    month: month ?? undefined,
  };
}

function readingFor(bike: SaleDescription) {
  return { paidShare: { rides: 1, notRiding: 1 }, logPriceLevel: 0, like: bike.attributes };
}

/** Share of the way from the table's median to the comparables' price that the median has gone. */
function moved(model: ValueModel, bike: SaleDescription, comparables: readonly Comparable[]): number {
  const before = predict(model.initial, bike).logMedian;
  const away = 0.4;
  const priced = comparables.map((one) => ({ ...one, price: Math.exp(before - away) }));
  const belief = learnFromSales(model, readComparables(model, priced, readingFor(bike)));
  return (before - predict(belief, bike).logMedian) / away;
}

const BIKES: readonly (readonly [string, SaleDescription])[] = [
  ["a plain bike", plainSale()],
  ["one that does not ride", plainSale({}, { state: { kind: "does-not-ride" } })],
  [
    "a collectable one, whose prices scatter more",
    plainSale(
      { category: "road-racing", era: "1970s", componentTier: "top" },
      { originality: 1, desirability: 1, state: { kind: "rides", condition: 1 } },
    ),
  ],
];

describe("n sales of the same model move the estimate by n / (n + variance within / variance between models) (Bühlmann 1967)", () => {
  for (const [name, bike] of BIKES) {
    for (const betweenModels of [0.2, PRIOR.betweenModels, 2]) {
      test(`${name}, variance between over within ${betweenModels}`, () => {
        const model = sameModelOnly(betweenModels);
        for (const n of [1, 2, 3, 10, 50]) {
          const comparables = Array.from({ length: n }, () => soldAs(bike));
          expect(moved(model, bike, comparables)).toBeCloseTo(n / (n + 1 / betweenModels), 6);
        }
      });
    }
  }

  test("the collectable one does scatter more", () => {
    expect(spreadMultiple(sameModelOnly(1).layout, BIKES[2]![1])).toBeGreaterThan(1);
  });

  test("an old sale counts as the part of one that its age leaves", () => {
    const bike = plainSale();
    const { betweenModels, halfLifeDays } = PRIOR;
    const old = { ...soldAs(bike), ageDays: 2 * halfLifeDays };
    const n = 2 + 3 / 4;
    const sales = [soldAs(bike), soldAs(bike), old, old, old];
    expect(moved(sameModelOnly(betweenModels), bike, sales)).toBeCloseTo(n / (n + 1 / betweenModels), 6);
  });

  test("one of which less is known counts for less, by what its unknowns add to the variance (Bühlmann & Straub 1970)", () => {
    const bike = plainSale();
    const model = sameModelOnly(PRIOR.betweenModels, false);
    const { condition: _, ...vague } = soldAs(bike);
    const [read] = readComparables(model, [vague], readingFor(bike));
    expect(read!.precision).toBeLessThan(0.9);
    // What the comparable's description and the find's differ by is in its price here, so that both say the same.
    const price = Math.exp(
      read!.x.reduce((sum, value, column) => sum + value * model.initial.coefficients[column]!, 0) - 0.4,
    );
    const sales = readComparables(
      model,
      Array.from({ length: 4 }, () => ({ ...vague, price })),
      readingFor(bike),
    );
    const belief = learnFromSales(model, sales);
    const share = (predict(model.initial, bike).logMedian - predict(belief, bike).logMedian) / 0.4;
    const weight = 4 * read!.precision;
    expect(share).toBeCloseTo(weight / (weight + 1 / PRIOR.betweenModels), 6);
  });

  test("the weights shown beside the sales sum to it", () => {
    const bike = plainSale();
    const model = sameModelOnly(PRIOR.betweenModels);
    const sales = readComparables(
      model,
      Array.from({ length: 3 }, () => soldAs(bike)),
      readingFor(bike),
    );
    const sum = influences(learnFromSales(model, sales), sales, bike).reduce(
      (all, { weight }) => all + weight,
      0,
    );
    expect(sum).toBeCloseTo(3 / (3 + 1 / PRIOR.betweenModels), 6);
  });

  test("sales of other models tell nothing of this one", () => {
    const bike = plainSale();
    const others = Array.from({ length: 10 }, () => ({ ...soldAs(bike), likeThis: false }));
    expect(moved(sameModelOnly(PRIOR.betweenModels), bike, others)).toBeCloseTo(0, 6);
  });
});
