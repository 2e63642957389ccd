import { foldRow } from "../../worker/engine/statistics/givens.ts";
import { type LeastSquaresFit, leastSquares } from "../../worker/engine/statistics/leastSquares.ts";
import { inverseOfGram, type UpperTriangle } from "../../worker/engine/statistics/upperTriangle.ts";
import { termHolds } from "../../worker/engine/valuation/bikeClass.ts";
import { CIRCUMSTANCES, type DemoDriver } from "../../worker/engine/valuation/driver.ts";
import type { ValueRow } from "../../worker/engine/valuation/rowEntries.ts";
import type { ComparableSale } from "../../worker/engine/valuation/saleDescription.ts";
import { denseRow, withinModels } from "../../worker/engine/valuation/valueBelief.ts";
import { type ValueLayout, valueLayout } from "../../worker/engine/valuation/valueLayout.ts";
import { valueRow, withoutCircumstances } from "../../worker/engine/valuation/valueRow.ts";
import type { FittedModel, ValueDesign, ValuePrior } from "../../worker/engine/valuation/valueTables.ts";

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
  readonly observations: readonly Observation[];
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
    return { layout, fit, observations, limited, rounds };
  }
}

/** The fit as the engine reads it: its coefficients, and the information it is given beside sales of one's own. */
export function fittedModel(
  design: ValueDesign,
  { layout, fit, observations }: ValueFit,
  prior: ValuePrior,
): FittedModel {
  const root = priorRoot(layout, fit, prior, observations.length);
  return {
    design,
    rows: observations.length,
    degreesOfFreedom: fit.degreesOfFreedom,
    residualSd: digits(fit.residualSd, COEFFICIENT_DIGITS),
    largestLeverage: digits(largestLeverage(layout, root, observations), COEFFICIENT_DIGITS),
    columns: Array.from(fit.coefficients, (coefficient, index) => ({
      name: layout.names[layout.demo.start + index]!,
      coefficient: digits(coefficient, COEFFICIENT_DIGITS),
    })),
    squareRootInformation: Array.from(root.entries, (entry) => digits(entry, TRIANGLE_DIGITS)),
  };
}

/**
 * Root of the prior information in units of the variance within a model: the demo sales to the power of a few sales over their number (Ibrahim & Chen
 * 2000), and for each column a row that holds it near its fitted value. The sales scatter between models too, so each counts for less by that.
 */
function priorRoot(
  layout: ValueLayout,
  fit: LeastSquaresFit,
  prior: ValuePrior,
  sales: number,
): UpperTriangle {
  const { start, size } = layout.demo;
  const power = Math.sqrt(prior.demoSalesCount / sales / (1 + prior.betweenModels));
  const entries = Float64Array.from(fit.triangle.entries, (entry) => power * entry);
  const sd = Math.sqrt(withinModels(fit, prior));
  layout.names.slice(start, start + size).forEach((name, column) => {
    const row = new Float64Array(size);
    row[column] = sd / prior.driverSd[driverOf(name)];
    foldRow({ size, entries, rotated: new Float64Array(size) }, row, 0);
  });
  return { size, entries };
}

/** Columns are named "driver:level"; months are the season's. */
function driverOf(name: string): DemoDriver {
  const driver = name.split(":")[0]!;
  return (driver === "month" ? "season" : driver) as DemoDriver;
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
    observations.map((observation) => demoRow(layout, seenRow(observation))),
    observations.map(({ logPrice, limit }) => logPrice - (limit ?? 0)),
    observations.map(({ spread }) => 1 / (spread * spread)),
  );
}

function limitedBy(layout: ValueLayout, fit: LeastSquaresFit, observation: Observation): Observation {
  const [low, high] = layout.design.circumstanceLimits.map(Math.log) as [number, number];
  const { columns, values, drivers } = observation.row;
  const product = columns.reduce(
    (sum, column, index) =>
      CIRCUMSTANCES.includes(drivers[index]!)
        ? sum + fit.coefficients[column - layout.demo.start]! * values[index]!
        : sum,
    0,
  );
  return { ...observation, limit: product > high ? high : product < low ? low : null };
}

function largestLeverage(
  { demo }: ValueLayout,
  root: UpperTriangle,
  observations: readonly Observation[],
): number {
  const covariance = inverseOfGram(root);
  const { size } = root;
  return observations.reduce((largest, observation) => {
    const { columns, values } = seenRow(observation);
    const form = columns.reduce(
      (sum, column, i) =>
        columns.reduce(
          (inner, other, j) =>
            inner + covariance[(column - demo.start) * size + other - demo.start]! * values[i]! * values[j]!,
          sum,
        ),
      0,
    );
    return Math.max(largest, form / observation.spread ** 2);
  }, 0);
}

/** The columns that the demo sales fill. */
function demoRow({ names, demo: { start, size } }: ValueLayout, row: ValueRow): Float64Array {
  return denseRow(row, names.length).subarray(start, start + size);
}

function seenRow({ row, limit }: Observation): ValueRow {
  return limit === null ? row : withoutCircumstances(row);
}

function digits(value: number, count: number): number {
  return Number(value.toPrecision(count));
}
