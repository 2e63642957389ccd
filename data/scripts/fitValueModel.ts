import { type LeastSquaresFit, leastSquares } from "../../worker/engine/statistics/leastSquares.ts";
import { inverseOfGram } from "../../worker/engine/statistics/upperTriangle.ts";
import { termHolds } from "../../worker/engine/valuation/bikeClass.ts";
import type { ComparableSale } from "../../worker/engine/valuation/saleDescription.ts";
import { type ValueLayout, valueLayout } from "../../worker/engine/valuation/valueLayout.ts";
import {
  CIRCUMSTANCES,
  type ValueRow,
  valueRow,
  withoutCircumstances,
} from "../../worker/engine/valuation/valueRow.ts";
import type { FittedModel, ValueDesign } from "../../worker/engine/valuation/valueTables.ts";

/** From this round on sales only join those at a limit: one that sits on the edge would otherwise go to and fro for ever. */
const LAST_LEAVING_ROUND = 3;
/** Coefficients keep this many digits in the file, R fewer: it serves standard errors alone. */
const COEFFICIENT_DIGITS = 12;
const TRIANGLE_DIGITS = 7;

/** A sale as the regression sees it. */
interface Observation {
  readonly row: ValueRow;
  readonly logPrice: number;
  /** Residual spread as a multiple of the ordinary one. */
  readonly spread: number;
  /** Which limit of the circumstances binds: its log, or null. */
  readonly limit: number | null;
}

/** The regression with what its tests ask for. */
export interface ValueFit {
  readonly layout: ValueLayout;
  readonly fit: LeastSquaresFit;
  readonly largestLeverage: number;
  readonly limited: number;
  readonly rounds: number;
}

/**
 * Weighted least squares of log price on the design, each sale weighted by 1 / spread^2.
 * Where the fitted product of presentation, papers, season and place lies beyond its limits, it is taken for the limit:
 * those columns leave the row and the limit's log leaves the price. Which sales those are depends on the fit, so the
 * fit is repeated until the set stands still.
 */
export function fitValueModel(design: ValueDesign, sales: readonly ComparableSale[]): ValueFit {
  const layout = valueLayout(design);
  let observations = sales.map((sale) => observationOf(layout, sale));
  for (let rounds = 1; ; rounds++) {
    const fit = fitOnce(layout, observations);
    const next = observations.map((observation) =>
      rounds > LAST_LEAVING_ROUND && observation.limit !== null
        ? observation
        : limitedBy(layout, fit, observation),
    );
    const settled = next.every(({ limit }, index) => limit === observations[index]!.limit);
    observations = next;
    if (!settled) continue;
    const limited = observations.filter(({ limit }) => limit !== null).length;
    return { layout, fit, largestLeverage: largestLeverage(fit, observations), limited, rounds };
  }
}

/** The fit as the engine reads it. */
export function fittedModel(
  design: ValueDesign,
  { layout, fit, largestLeverage: largest }: ValueFit,
  rows: number,
): FittedModel {
  return {
    design,
    rows,
    degreesOfFreedom: fit.degreesOfFreedom,
    residualSd: digits(fit.residualSd, COEFFICIENT_DIGITS),
    largestLeverage: digits(largest, COEFFICIENT_DIGITS),
    columns: layout.names.map((name, index) => ({
      name,
      coefficient: digits(fit.coefficients[index]!, COEFFICIENT_DIGITS),
    })),
    squareRootInformation: Array.from(fit.triangle.entries, (entry) => digits(entry, TRIANGLE_DIGITS)),
  };
}

function observationOf(layout: ValueLayout, { description, price }: ComparableSale): Observation {
  const { any, spread } = layout.design.collectable;
  const scatters = any.some((term) => termHolds(term, description.attributes, description.originality));
  return {
    row: valueRow(layout, description),
    logPrice: Math.log(price),
    spread: scatters ? spread : 1,
    limit: null,
  };
}

function fitOnce(layout: ValueLayout, observations: readonly Observation[]): LeastSquaresFit {
  return leastSquares(
    observations.map((observation) => dense(seenRow(observation), layout.names.length)),
    observations.map(({ logPrice, limit }) => logPrice - (limit ?? 0)),
    observations.map(({ spread }) => 1 / (spread * spread)),
  );
}

function limitedBy(layout: ValueLayout, fit: LeastSquaresFit, observation: Observation): Observation {
  const [low, high] = layout.design.circumstanceLimits.map(Math.log) as [number, number];
  const { columns, values, drivers } = observation.row;
  const product = columns.reduce(
    (sum, column, index) =>
      CIRCUMSTANCES.includes(drivers[index]!) ? sum + fit.coefficients[column]! * values[index]! : sum,
    0,
  );
  return { ...observation, limit: product > high ? high : product < low ? low : null };
}

function largestLeverage(fit: LeastSquaresFit, observations: readonly Observation[]): number {
  const covariance = inverseOfGram(fit.triangle);
  const size = fit.coefficients.length;
  return observations.reduce((largest, observation) => {
    const { columns, values } = seenRow(observation);
    const form = columns.reduce(
      (sum, column, i) =>
        columns.reduce(
          (inner, other, j) => inner + covariance[column * size + other]! * values[i]! * values[j]!,
          sum,
        ),
      0,
    );
    return Math.max(largest, form / observation.spread ** 2);
  }, 0);
}

function seenRow({ row, limit }: Observation): ValueRow {
  return limit === null ? row : withoutCircumstances(row);
}

function dense({ columns, values }: ValueRow, size: number): Float64Array {
  const row = new Float64Array(size);
  columns.forEach((column, index) => {
    row[column]! += values[index]!;
  });
  return row;
}

function digits(value: number, count: number): number {
  return Number(value.toPrecision(count));
}
