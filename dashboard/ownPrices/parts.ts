import { type CellReader, unknownWord } from "./cells.ts";
import { plainKey } from "./nearest.ts";

/** Reads a part by its id or its name in the catalogue; gives the id. */
export function partOf(parts: readonly { readonly id: string; readonly name: string }[]): CellReader<string> {
  const byKey = new Map(parts.flatMap(({ id, name }) => [id, name].map((one) => [plainKey(one), id])));
  return (cell) => {
    const id = byKey.get(plainKey(cell));
    if (id !== undefined) return { value: id };
    return {
      wrong: unknownWord(
        cell,
        parts.map(({ id: value, name: label }) => ({ value, label })),
      ),
    };
  };
}
