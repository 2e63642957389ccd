import type { Probability } from "../quantity.ts";
import { learn, type RegressionRow } from "../statistics/conjugateRegression.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { inverseOfGram } from "../statistics/upperTriangle.ts";
import type { Comparable, KnownAttributes } from "./comparable.ts";
import { type CoreMoments, coreMoments } from "./coreMoments.ts";
import { expectedRow } from "./expectedRow.ts";
import { PRICED_ATTRIBUTES, type PricedAttributes } from "./saleDescription.ts";
import type { KnownDescription } from "./unknowns.ts";
import { beliefIn, type ValueBelief } from "./valueBelief.ts";
import type { ValueModel } from "./valueModel.ts";

/** How the user's prices are read. */
export interface Reading {
  /** Share of the going rate that a buyer pays in the end, for a bike that rides and for one that does not. */
  readonly paidShare: { readonly rides: Probability; readonly notRiding: Probability };
  /** Log of the user's price level over the table's. */
  readonly logPriceLevel: number;
  /** The find: whatever the same model shares with it. */
  readonly like: PricedAttributes;
}

/** A description as the regression sees it: shared by all comparables that are described alike. */
export interface DescribedRow {
  readonly x: Float64Array;
  /** Inverse variance of one price in units of the variance within a model. */
  readonly precision: number;
  /** Log of what a buyer pays of the going rate. */
  readonly logPaidShare: number;
}

/** A comparable as the regression sees it. */
export interface ReadComparable extends RegressionRow {
  readonly x: Float64Array;
  readonly count: number;
  /** Price as a going rate at the table's level: what the bike would have been offered at. */
  readonly goingRate: number;
}

/**
 * Comparables as rows of the regression on the log of going rates. A price paid is brought up by what haggling took off; an asking price carries
 * the column whose coefficient says how much asking prices run high. What is unknown of the bike is averaged over (expectedRow), and how much the bikes
 * it may be differ adds to its variance; so does the difference between models unless it is the find's own. Age counts as 2^(-age / half-life) of
 * a sale. Bikes described alike share one row, so that their average is worked out once.
 */
export function readComparables(
  model: ValueModel,
  comparables: readonly Comparable[],
  reading: Reading,
): readonly ReadComparable[] {
  const rows = new Map<string, DescribedRow>();
  const cores = coresKept(model);
  return comparables.map((comparable) => {
    const key = keyOf(comparable);
    let row = rows.get(key);
    if (row === undefined) {
      row = describedRow(model, comparable, reading, cores);
      rows.set(key, row);
    }
    const { price, kind, ageDays } = comparable;
    const y = log(price) - reading.logPriceLevel - (kind === "paid" ? row.logPaidShare : 0);
    return {
      x: row.x,
      y,
      precision: row.precision,
      count: exp((-Math.LN2 * ageDays) / model.prior.halfLifeDays),
      goingRate: exp(y),
    };
  });
}

/** From so many comparables on, inverting R once costs less than solving with it for each. */
const MANY = 1000;

/** The belief after the comparables that were read. */
export function learnFromSales(model: ValueModel, sales: readonly ReadComparable[]): ValueBelief {
  if (sales.length === 0) return model.initial;
  const regression = learn(model.initial.regression, sales);
  const covariance = sales.length < MANY ? null : inverseOfGram(regression);
  return beliefIn(regression, { ...model.initial, covariance });
}

function describedRow(
  { layout, prior, initial }: ValueModel,
  comparable: Comparable,
  { like, paidShare }: Reading,
  coreOf: (known: KnownDescription) => CoreMoments,
): DescribedRow {
  const { likeThis, kind } = comparable;
  const attributes = likeThis ? { ...shared(like), ...told(comparable.attributes) } : comparable.attributes;
  const known = { ...comparable, attributes };
  const expected = expectedRow(layout, initial.coefficients, prior.shares, known, coreOf);
  const { x, variance, squaredSpread, rides } = expected;
  if (kind === "asked") x[layout.asked] = 1;
  if (likeThis) x[layout.sameModel] = Math.sqrt(squaredSpread);
  const scatter = squaredSpread * (likeThis ? 1 : 1 + prior.betweenModels) + variance / initial.variance;
  return {
    x,
    precision: 1 / scatter,
    logPaidShare: rides * log(paidShare.rides) + (1 - rides) * log(paidShare.notRiding),
  };
}

/** The sums over kind, tier, era and material, worked out once for all comparables of which the same of these is known. */
function coresKept({ layout, prior, initial }: ValueModel): (known: KnownDescription) => CoreMoments {
  const kept = new Map<string, CoreMoments>();
  const { fashion, collectable } = layout.design;
  // Of originality only which of these it reaches bears on the sums.
  const thresholds = [...new Set([...fashion, ...collectable.any].map((term) => term.originalityFrom))];
  const reached = (originality: number | undefined) =>
    originality === undefined ? "any" : thresholds.filter((least) => originality >= least).length;
  return (known) => {
    const { category, era, frameMaterial, componentTier, stepThrough, drivetrain } = known.attributes;
    const key = `${category} ${era} ${frameMaterial} ${componentTier} ${stepThrough} ${drivetrain} ${reached(known.originality)}`;
    let core = kept.get(key);
    if (core === undefined) {
      core = coreMoments(layout, initial.coefficients, prior.shares, known);
      kept.set(key, core);
    }
    return core;
  };
}

/** The same for comparables that the regression cannot tell apart but by price and age. */
function keyOf({ attributes, ...rest }: Comparable): string {
  const { kind, likeThis, state, condition, originality, desirability, month } = rest;
  let key = `${kind} ${likeThis} ${state} ${condition} ${originality} ${desirability} ${month}`;
  for (const name of PRICED_ATTRIBUTES) key += ` ${attributes[name]}`;
  return key;
}

/** What bikes of one model have in common. */
function shared(bike: PricedAttributes): KnownAttributes {
  const { category, era, frameMaterial, componentTier, stepThrough, drivetrain } = bike;
  return { category, era, frameMaterial, componentTier, stepThrough, drivetrain };
}

function told(attributes: KnownAttributes): KnownAttributes {
  return Object.fromEntries(Object.entries(attributes).filter(([, value]) => value !== undefined));
}
