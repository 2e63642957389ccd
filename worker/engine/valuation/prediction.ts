import type { Money } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { type BikeStart, bikeRow, bikeStart } from "./bikeStart.ts";
import { CIRCUMSTANCES, DRIVERS } from "./driver.ts";
import { type GoingRate, spreadOfTails } from "./goingRate.ts";
import type { ValueRow } from "./rowEntries.ts";
import type { PricedAttributes, SaleDescription } from "./saleDescription.ts";
import { medianVariance, type ValueBelief } from "./valueBelief.ts";
import type { ValueLayout } from "./valueLayout.ts";
import { addMarket, addSameModel, valueRow, withoutCircumstances } from "./valueRow.ts";

/** One step from the plain reference bike to this one: the factor by which it moves the median price. */
export interface ValueDriver {
  readonly term: string;
  readonly factor: number;
}

/** Why a bike is worth what it is. */
export interface Explanation {
  /** Median of the plain reference bike; times all the factors it gives this bike's median. */
  readonly referencePrice: Money;
  /** Only those that move the price. */
  readonly drivers: readonly ValueDriver[];
  /** How far the bike lies from the sales behind the model. */
  readonly leverage: number;
  /** Farther out than any demo sale. */
  readonly extrapolates: boolean;
}

/**
 * Predicts the going rate of a bike in one state: Student's t in log price.
 * Location x'm; scale^2 = (b/a) (k^2 + x'Vx), k the multiple of the spread for this kind of bike, V the coefficients' covariance for unit
 * variance, x with the columns of one's own market and of this very model. The product of presentation, papers, season and place is held between the
 * design's limits; where a limit binds, those columns carry no uncertainty.
 * @param start of the sale's own bike, where several of its sales are predicted
 * @throws DomainError for a description outside its domain
 */
export function predict(belief: ValueBelief, sale: SaleDescription, start?: BikeStart): GoingRate {
  const { row, limit, spread } = targetRow(belief, sale, start);
  const unknown = medianVariance(belief, limit === 0 ? row : withoutCircumstances(row));
  return goingRate(belief, location(belief, row) + limit, spread, unknown);
}

/** A going rate from its log median, the spread's multiple and the variance of the median in units of b/a. */
export function goingRate(
  { variance, tails }: Pick<ValueBelief, "variance" | "tails">,
  logMedian: number,
  spread: number,
  unknown: number,
): GoingRate {
  const logScale = Math.sqrt(variance * (spread * spread + unknown));
  return { logMedian, logScale, logSd: logScale * spreadOfTails(tails), tails };
}

/** Tells a prediction as factors from the plain reference bike, and whether the bike lies outside the demo sales. */
export function explain(belief: ValueBelief, sale: SaleDescription): Explanation {
  const { row, limit, spread } = targetRow(belief, sale);
  const factors = contributions(belief, row);
  const known = limit === 0 ? row : withoutCircumstances(row);
  const leverage = medianVariance(belief, demoColumns(known, belief.layout)) / (spread * spread);
  return {
    referencePrice: exp(factors[0]!),
    drivers: told(factors, limit),
    leverage,
    extrapolates: leverage > belief.largestLeverage,
  };
}

/** A bike to be priced as the regression sees it. */
export interface TargetRow {
  readonly row: ValueRow;
  /** The log by which its circumstances are held between their limits. */
  readonly limit: number;
  /** Multiple of the ordinary spread. */
  readonly spread: number;
}

/** The row of a bike to be priced, with the columns of one's own market and of this very model. */
export function targetRow(
  belief: ValueBelief,
  sale: SaleDescription,
  start = bikeStart(belief.layout, sale),
): TargetRow {
  const { layout } = belief;
  const { spread } = start;
  const row = addMarket(valueRow(layout, sale, start), layout, sale.attributes.category);
  const limit = circumstanceLimit(belief, row);
  return { row: addSameModel(row, layout, spread), limit, spread };
}

/** Median of the bike sold ready, from kind, era, material, size and market alone: what the worth of its parts is measured by. */
export function readyBase(belief: ValueBelief, bike: PricedAttributes): Money {
  return exp(location(belief, addMarket(bikeRow(belief.layout, bike), belief.layout, bike.category)));
}

function location({ coefficients }: ValueBelief, { columns, values }: ValueRow): number {
  let sum = 0;
  for (let i = 0; i < columns.length; i++) sum += coefficients[columns[i]!]! * values[i]!;
  return sum;
}

/** Sum of value x coefficient by driver, in the order of DRIVERS. */
function contributions({ coefficients }: ValueBelief, { columns, values, drivers }: ValueRow): number[] {
  const sums = new Array<number>(DRIVERS.length).fill(0);
  columns.forEach((column, index) => {
    sums[DRIVERS.indexOf(drivers[index]!)]! += coefficients[column]! * values[index]!;
  });
  return sums;
}

/** What must be added to the log of the circumstances' product to bring it within its limits; 0 where it is. */
function circumstanceLimit(
  { layout, coefficients }: ValueBelief,
  { columns, values, drivers }: ValueRow,
): number {
  const [low, high] = layout.design.circumstanceLimits;
  let product = 0;
  for (let i = 0; i < columns.length; i++)
    if (CIRCUMSTANCES.includes(drivers[i]!)) product += coefficients[columns[i]!]! * values[i]!;
  return Math.min(log(high), Math.max(log(low), product)) - product;
}

function demoColumns(
  { columns, values, drivers }: ValueRow,
  { demo: { start, size } }: ValueLayout,
): ValueRow {
  const kept = columns.map((column) => column >= start && column < start + size);
  return {
    columns: columns.filter((_, index) => kept[index]),
    values: values.filter((_, index) => kept[index]),
    drivers: drivers.filter((_, index) => kept[index]),
  };
}

function told(factors: readonly number[], limit: number): ValueDriver[] {
  const drivers = DRIVERS.map((term, index) => ({ term: term as string, factor: exp(factors[index]!) }))
    .slice(1)
    .filter(({ factor }) => factor !== 1);
  return limit === 0 ? drivers : [...drivers, { term: "limit", factor: exp(limit) }];
}
