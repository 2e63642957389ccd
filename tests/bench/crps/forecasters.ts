import { leastSquares } from "../../../worker/engine/statistics/leastSquares.ts";
import type { RealPrices } from "../../outside/hedonic-tables/realPrices.ts";
import { weakRegression } from "../../outside/hedonic-tables/weakRegression.ts";
import { crpsEnsemble, crpsNormal, crpsStudentT } from "./crps.ts";

/** Rows to predict, and the logs of what they went for. */
export type Prices = Pick<RealPrices, "rows" | "y" | "kind">;

/** Learns from some rows; gives the score of its forecast for any other, against what that one went for. Logs of prices. */
export type Forecaster = (learned: readonly number[]) => (row: number) => number;

/** So few of a kind tell no spread. */
const FEWEST = 3;

/** The engine's regression under a weak prior. */
export function weakRegressionForecaster(prices: RealPrices): Forecaster {
  return (learned) => {
    const predicted = weakRegression(prices, learned);
    return (row) => {
      const { location, scale, degreesOfFreedom } = predicted(row);
      return crpsStudentT(prices.y[row]!, location, scale, degreesOfFreedom);
    };
  };
}

/** All that was paid for the same kind: its median, with the spread that was seen. Of everything where there are too few. */
export function sameKind({ y, kind }: Prices): Forecaster {
  return (learned) => {
    const all = learned.map((row) => y[row]!);
    const ofKind = byKind(learned, kind);
    return (row) => {
      const same = ofKind.get(kind[row]!) ?? [];
      return crpsEnsemble(y[row]!, same.length >= FEWEST ? same.map((one) => y[one]!) : all);
    };
  };
}

/** What was paid for the few that are nearest, every column by its standard deviation; among the same kind where asked. */
export function nearestNeighbours(
  { rows, y, kind }: Prices,
  neighbours: number,
  amongKind = false,
): Forecaster {
  return (learned) => {
    const sds = deviations(rows, learned);
    const ofKind = byKind(learned, kind);
    const distance = (one: readonly number[], other: readonly number[]) =>
      sds.reduce((sum, sd, column) => {
        const apart = one[column]! - other[column]!;
        return apart === 0 || sd === 0 ? sum : sum + (apart / sd) ** 2;
      }, 0);
    return (row) => {
      const among = (amongKind ? ofKind.get(kind[row]!) : undefined) ?? learned;
      const nearest = among
        .map((other) => [distance(rows[row]!, rows[other]!), y[other]!] as const)
        .sort(([near], [far]) => near - far)
        .slice(0, neighbours);
      return crpsEnsemble(
        y[row]!,
        nearest.map(([, price]) => price),
      );
    };
  };
}

/** Ordinary least squares on the same columns, with a normal band of its residual spread. */
export function normalBand({ rows, y }: Prices): Forecaster {
  return (learned) => {
    const { coefficients, residualSd } = leastSquares(
      learned.map((row) => rows[row]!),
      learned.map((row) => y[row]!),
    );
    return (row) => {
      const fitted = rows[row]!.reduce((sum, value, column) => sum + value * coefficients[column]!, 0);
      return crpsNormal(y[row]!, fitted, residualSd);
    };
  };
}

function byKind(learned: readonly number[], kind: readonly string[]): ReadonlyMap<string, number[]> {
  const ofKind = new Map<string, number[]>();
  for (const row of learned) {
    const same = ofKind.get(kind[row]!);
    if (same) same.push(row);
    else ofKind.set(kind[row]!, [row]);
  }
  return ofKind;
}

function deviations(rows: readonly (readonly number[])[], learned: readonly number[]): number[] {
  return rows[0]!.map((_, column) => {
    const mean = learned.reduce((sum, row) => sum + rows[row]![column]!, 0) / learned.length;
    const variance =
      learned.reduce((sum, row) => sum + (rows[row]![column]! - mean) ** 2, 0) / learned.length;
    return Math.sqrt(variance);
  });
}
