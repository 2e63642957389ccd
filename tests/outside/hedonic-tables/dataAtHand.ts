import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const FOLDER = process.env.SPOKEWORTH_BENCHMARKS ?? "";

/** A data set that is not copied into the project, or null where it is not at hand: columns by name, in the file's order. */
export function dataAtHand(file: string): ReadonlyMap<string, readonly number[]> | null {
  const path = join(FOLDER, file);
  if (FOLDER === "" || !existsSync(path)) return null;
  const [header, ...lines] = readFileSync(path, "utf8").trim().split("\n");
  const names = header!.replaceAll('"', "").trim().split(",");
  const rows = lines.map((line) => line.split(",").map(Number));
  return new Map(names.map((name, column) => [name, rows.map((cells) => cells[column]!)]));
}
