import type { Money } from "../quantity.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import { termHolds } from "./bikeClass.ts";
import type { PricedAttributes, SaleDescription } from "./saleDescription.ts";
import type { ValueModel } from "./valueModel.ts";
import {
  bikeRow,
  CIRCUMSTANCES,
  DRIVERS,
  type ValueRow,
  valueRow,
  withoutCircumstances,
} from "./valueRow.ts";

/** One step from the plain reference bike to this one: the factor by which it moves the median price. */
export interface ValueDriver {
  readonly term: string;
  readonly factor: number;
}

/** Distribution of the going rate: log-normal, before haggling, fee and post, in the currency of the table. */
export interface Prediction extends LogNormal {
  /** Median of the plain reference bike; times all the factors it gives this bike's median. */
  readonly referencePrice: Money;
  /** Only those that move the price. */
  readonly drivers: readonly ValueDriver[];
  /** How far the bike lies from the sales behind the model. */
  readonly leverage: number;
  /** Farther out than any of those sales. */
  readonly extrapolates: boolean;
}

/**
 * Predicts the going rate of a bike in one state.
 * logMedian = x'b; logSd^2 = s^2 (k^2 + x'Vx), s the residual spread, k its multiple for this kind of bike, V the
 * coefficients' covariance for unit variance. The product of presentation, papers, season and place is held between
 * the design's limits; where a limit binds, those columns carry no uncertainty.
 * @throws DomainError for a description outside its domain
 */
export function predict(model: ValueModel, sale: SaleDescription): Prediction {
  const row = valueRow(model.layout, sale);
  const factors = contributions(model, row);
  const limit = circumstanceLimit(model, factors);
  const spread = spreadMultiple(model, sale);
  const parameterVariance = quadraticForm(model, limit === 0 ? row : withoutCircumstances(row));
  const leverage = parameterVariance / (spread * spread);
  return {
    logMedian: factors.reduce((sum, value) => sum + value, limit),
    logSd: model.residualSd * Math.sqrt(spread * spread + parameterVariance),
    referencePrice: Math.exp(factors[0]!),
    drivers: told(factors, limit),
    leverage,
    extrapolates: leverage > model.largestLeverage,
  };
}

/**
 * Multiple of the ordinary residual spread for a bike: above 1 for collectable kinds, whose prices scatter more.
 */
export function spreadMultiple(model: ValueModel, sale: SaleDescription): number {
  const { any, spread } = model.layout.design.collectable;
  return any.some((term) => termHolds(term, sale.attributes, sale.originality)) ? spread : 1;
}

/** Median of the bike sold ready, from kind, era, material and size alone: what the worth of its parts is measured by. */
export function readyBase(model: ValueModel, bike: PricedAttributes): Money {
  const row = bikeRow(model.layout, bike);
  return Math.exp(contributions(model, row).reduce((sum, value) => sum + value, 0));
}

/** Sum of value x coefficient by driver, in the order of DRIVERS. */
function contributions({ coefficients }: ValueModel, { columns, values, drivers }: ValueRow): number[] {
  const sums = new Array<number>(DRIVERS.length).fill(0);
  columns.forEach((column, index) => {
    sums[DRIVERS.indexOf(drivers[index]!)]! += coefficients[column]! * values[index]!;
  });
  return sums;
}

/** What must be added to the log of the circumstances' product to bring it within its limits; 0 where it is. */
function circumstanceLimit({ layout }: ValueModel, factors: readonly number[]): number {
  const [low, high] = layout.design.circumstanceLimits;
  const product = CIRCUMSTANCES.reduce((sum, driver) => sum + factors[DRIVERS.indexOf(driver)]!, 0);
  return Math.min(Math.log(high), Math.max(Math.log(low), product)) - product;
}

function quadraticForm({ covariance, coefficients }: ValueModel, { columns, values }: ValueRow): number {
  const size = coefficients.length;
  let sum = 0;
  for (let i = 0; i < columns.length; i++) {
    const start = columns[i]! * size;
    let inner = covariance[start + columns[i]!]! * values[i]!;
    for (let j = 0; j < i; j++) inner += 2 * covariance[start + columns[j]!]! * values[j]!;
    sum += inner * values[i]!;
  }
  return sum;
}

function told(factors: readonly number[], limit: number): ValueDriver[] {
  const drivers = DRIVERS.map((term, index) => ({ term: term as string, factor: Math.exp(factors[index]!) }))
    .slice(1)
    .filter(({ factor }) => factor !== 1);
  return limit === 0 ? drivers : [...drivers, { term: "limit", factor: Math.exp(limit) }];
}
