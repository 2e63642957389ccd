import {
  type ConjugateRegression,
  conjugatePrior,
  expectedCoefficients,
  learn,
  predictive,
  type ScaledStudentT,
} from "../../../worker/engine/statistics/conjugateRegression.ts";
import type { RealPrices } from "./realPrices.ts";

/** A scatter of a fifth of the price, worth four sales. */
const SCATTER = { sd: 0.2, shape: 2 };

/**
 * The engine's regression on some rows of real prices under a weak prior, as the value model has one: every effect about none, by the group its column is
 * in (ridge). Columns are taken about the mean of the learned rows and by their standard deviation. The spread of those that scatter more is a multiple of
 * the others', taken from a first fit to the learned rows.
 * @returns the predictive distribution of any row
 */
export function weakRegression(
  prices: RealPrices,
  learned: readonly number[],
): (row: number) => ScaledStudentT {
  const standard = standardised(prices, learned);
  const fitWith = (multiple: number) => {
    const precision = (row: number) => (prices.scatters[row] ? 1 / multiple ** 2 : 1);
    const rows = learned.map((row) => ({ x: standard(row), y: prices.y[row]!, precision: precision(row) }));
    return { belief: learn(priorOf(prices), rows), precision };
  };
  const { belief, precision } = fitWith(spreadMultiple(prices, learned, standard, fitWith(1).belief));
  return (row) => predictive(belief, standard(row), precision(row));
}

function priorOf({ effectSds, level }: RealPrices): ConjugateRegression {
  const size = effectSds.length;
  const mean = effectSds.map((_, column) => (column === 0 ? level.mean : 0));
  const entries = effectSds.flatMap((sd, row) => [
    SCATTER.sd / (row === 0 ? level.sd : sd),
    ...new Array<number>(size - row - 1).fill(0),
  ]);
  return conjugatePrior(mean, { size, entries }, SCATTER.shape, SCATTER.shape * SCATTER.sd ** 2);
}

function standardised({ rows }: RealPrices, learned: readonly number[]): (row: number) => readonly number[] {
  const moments = rows[0]!.map((_, column) => {
    const values = learned.map((row) => rows[row]![column]!);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
    return { mean, sd: Math.sqrt(variance) };
  });
  return (row) =>
    moments.map(({ mean, sd }, column) => (column === 0 ? 1 : (rows[row]![column]! - mean) / sd));
}

/** Root mean square residual of the rows that scatter more over that of the others; 1 where there are none. */
function spreadMultiple(
  { y, scatters }: RealPrices,
  learned: readonly number[],
  standard: (row: number) => readonly number[],
  belief: ConjugateRegression,
): number {
  const coefficients = expectedCoefficients(belief);
  const meanSquare = (of: readonly number[]) =>
    of.reduce((sum, row) => {
      const fitted = standard(row).reduce((at, value, column) => at + value * coefficients[column]!, 0);
      return sum + (y[row]! - fitted) ** 2;
    }, 0) / of.length;
  const more = learned.filter((row) => scatters[row]);
  if (more.length === 0) return 1;
  return Math.sqrt(meanSquare(more) / meanSquare(learned.filter((row) => !scatters[row])));
}
