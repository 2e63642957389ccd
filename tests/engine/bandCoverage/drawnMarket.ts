import type { RandomNumbers } from "../../../data/scripts/randomNumbers.ts";
import { spreadMultiple } from "../../../worker/engine/valuation/bikeStart.ts";
import type { Comparable, KnownAttributes } from "../../../worker/engine/valuation/comparable.ts";
import type { Reading } from "../../../worker/engine/valuation/learnFromSales.ts";
import { targetRow } from "../../../worker/engine/valuation/prediction.ts";
import type {
  PricedAttributes,
  SaleDescription,
  SaleState,
} from "../../../worker/engine/valuation/saleDescription.ts";
import type { ValueModel } from "../../../worker/engine/valuation/valueModel.ts";
import { drawnFrom, standardNormals } from "../statistics/drawnFrom.ts";

/** A market drawn from what the model believes beforehand: a find, sales and advertisements told of it, and what the find then goes for. */
export interface DrawnMarket {
  readonly find: SaleDescription;
  readonly comparables: readonly Comparable[];
  readonly reading: Reading;
  /** Log of the going rate that the find turns out to have. */
  readonly logPrice: number;
}

const PAID_SHARE = { rides: 0.9, notRiding: 0.8 };
/** Chances: a comparable is of the find's model, is an advertisement, is described in full where not said otherwise; a field is told where it is not. */
const LIKE_THIS = 0.3;
const ASKED = 0.3;
const IN_FULL = 0.3;
const FIELD_TOLD = 0.5;

/**
 * Draws coefficients and scatter from the prior, a find and its comparables from the market's shares, and a price for each by the model's own words: row
 * times coefficients, circumstances held between their limits, this model's or another's difference, scatter. Prices paid are after haggling, advertised
 * ones carry what asking adds. Then forgets what the user does not tell.
 */
export function drawMarket(
  model: ValueModel,
  random: RandomNumbers,
  comparables: number,
  describedInFull = IN_FULL,
): DrawnMarket {
  const normal = standardNormals(random);
  const { coefficients, sd } = drawnFrom(model.initial.regression, random, normal);
  const { layout, prior } = model;
  const truth = { ...model.initial, coefficients };
  const logLevel = 0.5 * normal();
  /** Going rate of a bike, its model's difference given in units of the spread. */
  const logPrice = (sale: SaleDescription, ofModel: number) => {
    const spread = spreadMultiple(layout, sale);
    const { row, limit } = targetRow(truth, sale);
    const known = row.columns.reduce(
      (sum, column, at) =>
        column === layout.sameModel ? sum : sum + coefficients[column]! * row.values[at]!,
      limit,
    );
    return known + spread * (ofModel + sd * normal());
  };
  const find = drawSale(model, random);
  const ownModel = coefficients[layout.sameModel]!;
  const drawComparable = (): Comparable => {
    const likeThis = random() < LIKE_THIS;
    const drawn = drawSale(model, random);
    const { sizeClass, place } = drawn.attributes;
    const sale = likeThis ? { ...drawn, attributes: { ...find.attributes, sizeClass, place } } : drawn;
    const ofModel = likeThis ? ownModel : Math.sqrt(prior.betweenModels) * sd * normal();
    const asked = random() < ASKED;
    const paidShare = sale.state.kind === "rides" ? PAID_SHARE.rides : PAID_SHARE.notRiding;
    const log =
      logLevel + logPrice(sale, ofModel) + (asked ? coefficients[layout.asked]! : Math.log(paidShare));
    return {
      price: Math.exp(log),
      kind: asked ? "asked" : "paid",
      ageDays: 0,
      likeThis,
      ...told(sale, random, random() < describedInFull ? 1 : FIELD_TOLD),
    };
  };
  return {
    find,
    comparables: Array.from({ length: comparables }, drawComparable),
    reading: { paidShare: PAID_SHARE, logPriceLevel: logLevel, like: find.attributes },
    logPrice: logPrice(find, ownModel),
  };
}

/** A bike as the market's shares say, with what stands at the knots of condition, originality and desirability. */
function drawSale({ layout, prior: { shares } }: ValueModel, random: RandomNumbers): SaleDescription {
  const among = <Level extends string>(of: Readonly<Record<Level, number>>) =>
    (Object.keys(of) as Level[])[pick(Object.values<number>(of), random)]!;
  const knot = (knots: readonly number[], of: readonly number[]) => knots[pick(of, random)]!;
  const era = among(shares.era);
  const kind = among(shares.state);
  const state: SaleState =
    kind === "rides" ? { kind, condition: knot(layout.design.conditionKnots, shares.condition) } : { kind };
  return {
    attributes: {
      category: among(shares.category) as PricedAttributes["category"],
      componentTier: among(shares.componentTier),
      era,
      frameMaterial: among(shares.frameMaterial[era]),
      sizeClass: among(shares.sizeClass),
      place: among(shares.place),
      stepThrough: among(shares.stepThrough),
      drivetrain: among(shares.drivetrain),
    },
    originality: knot(layout.design.originalityKnots, shares.originality),
    desirability:
      shares.desirability[
        pick(
          shares.desirability.map(({ share }) => share),
          random,
        )
      ]!.value,
    state,
    asFound: kind !== "rides",
    presentation: among(shares.presentation),
    papers: among(shares.papers),
    month: 1 + Math.floor(12 * random()),
  };
}

/** Index drawn by shares that sum to 1. */
function pick(shares: readonly number[], random: RandomNumbers): number {
  let left = random();
  for (const [index, share] of shares.entries()) {
    left -= share;
    if (left < 0) return index;
  }
  return shares.findLastIndex((share) => share > 0);
}

/** What the user tells of a sale: each field by chance, a condition only where the bike rides. */
function told(sale: SaleDescription, random: RandomNumbers, chance: number) {
  const maybe = <Value>(value: Value): Value | undefined => (random() < chance ? value : undefined);
  const attributes = Object.fromEntries(
    Object.entries(sale.attributes).filter(() => random() < chance),
  ) as KnownAttributes;
  const { state } = sale;
  const stateTold = maybe(state.kind);
  return {
    attributes,
    state: stateTold,
    condition: stateTold === "rides" && state.kind === "rides" ? maybe(state.condition) : undefined,
    originality: maybe(sale.originality),
    desirability: maybe(sale.desirability),
    month: maybe(sale.month ?? undefined),
  };
}
