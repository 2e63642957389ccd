import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { leastSquares } from "../../../worker/engine/statistics/leastSquares.ts";
import expected from "./expected.json" with { type: "json" };

const FOLDER = process.env.SPOKEWORTH_BENCHMARKS ?? "";
const LOGGED = ["homes14_logA", "windsor_T31", "windsor_T32"];
/** Collinear columns in double precision, against solvers of the same precision. */
const TOLERANCE = 1e-9;

type Table = {
  readonly names: string[];
  readonly coef: number[];
  readonly se: number[];
  readonly residualSD: number;
};

/** The first column is the price; "const" and "ln x" are made from what stands in the file. */
function design(path: string, names: readonly string[], logged: boolean) {
  const [header, ...lines] = readFileSync(path, "utf8").trim().split("\n");
  const columns = header!.replaceAll('"', "").trim().split(",");
  const cell = (cells: readonly number[], name: string): number => {
    if (name === "const") return 1;
    if (name.startsWith("ln ")) return Math.log(cell(cells, name.slice(3)));
    return cells[columns.indexOf(name)]!;
  };
  const rows = lines.map((line) => line.split(",").map(Number));
  return {
    rows: rows.map((cells) => names.map((name) => cell(cells, name))),
    y: rows.map(([price]) => (logged ? Math.log(price!) : price!)),
  };
}

describe("least squares reproduce published tables (SOURCE.md)", () => {
  for (const { csv, models } of Object.values(expected)) {
    const path = join(FOLDER, csv);
    const atHand = FOLDER !== "" && existsSync(path);
    for (const [name, table] of Object.entries(models) as [string, Table][]) {
      test.skipIf(!atHand)(`${name}${atHand ? "" : ": data not at hand"}`, () => {
        const { rows, y } = design(path, table.names, LOGGED.includes(name));
        const fit = leastSquares(rows, y);
        table.coef.forEach((value, index) => {
          expect(Math.abs(fit.coefficients[index]! / value - 1)).toBeLessThan(TOLERANCE);
          expect(Math.abs(fit.standardErrors[index]! / table.se[index]! - 1)).toBeLessThan(TOLERANCE);
        });
        expect(Math.abs(fit.residualSd / table.residualSD - 1)).toBeLessThan(TOLERANCE);
      });
    }
  }
});
