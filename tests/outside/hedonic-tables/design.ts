/** A regression's rows and responses. */
export interface Design {
  readonly rows: readonly (readonly number[])[];
  readonly y: readonly number[];
}

/** The first column is the price; "const" and "ln x" are made from what stands in the file. */
export function designOf(
  columns: ReadonlyMap<string, readonly number[]>,
  names: readonly string[],
  logged: boolean,
): Design {
  const price = [...columns.values()][0]!;
  const cell = (name: string, row: number): number => {
    if (name === "const") return 1;
    if (name.startsWith("ln ")) return Math.log(cell(name.slice(3), row));
    return columns.get(name)![row]!;
  };
  return {
    rows: price.map((_, row) => names.map((name) => cell(name, row))),
    y: logged ? price.map(Math.log) : price,
  };
}
