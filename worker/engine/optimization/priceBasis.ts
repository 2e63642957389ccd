import type { ChoiceTables } from "./choiceTables.ts";

/** No tie: what was one is only held as it is. */
export const FREE = -1;

/**
 * A vertex of the Lagrangian dual: prices at which as many ties hold as there are budgets. A tie is a price at 0, or an option of a group whose reduced
 * value equals that of the group's key.
 */
export interface PriceBasis {
  readonly prices: Float64Array;
  /** Option by group: its best at the prices. */
  readonly key: Int32Array;
  /** Of each tie: its option, or the count of options and its budget's row, or FREE. */
  readonly tie: Int32Array;
  /** Ties by rows: use of the tie's option less use of its key, or a unit vector. */
  readonly rows: Float64Array;
  /** Inverse of the ties, by columns: how the prices move when one tie is given up and the others held. */
  readonly inverse: Float64Array;
}

/** All prices at 0. */
export function zeroPrices({ limit, value, first }: ChoiceTables): PriceBasis {
  const m = limit.length;
  const identity = new Float64Array(m * m);
  for (let row = 0; row < m; row++) identity[row * m + row] = 1;
  return {
    prices: new Float64Array(m),
    key: first.slice(0, -1),
    tie: Int32Array.from(limit, (_, row) => value.length + row),
    rows: identity,
    inverse: identity.slice(),
  };
}

export function copyOf({ prices, key, tie, rows, inverse }: PriceBasis): PriceBasis {
  return {
    prices: prices.slice(),
    key: key.slice(),
    tie: tie.slice(),
    rows: rows.slice(),
    inverse: inverse.slice(),
  };
}

/** Puts a new tie in the place of one, by an elementary step of elimination. */
export function replaceTie(
  { tie, rows, inverse }: PriceBasis,
  at: number,
  entering: number,
  row: Float64Array,
): void {
  const m = row.length;
  tie[at] = entering;
  rows.set(row, at * m);
  const pivot = dot(row, inverse, at * m);
  for (let i = 0; i < m; i++) inverse[at * m + i]! /= pivot;
  for (let column = 0; column < m; column++) {
    if (column === at) continue;
    const factor = dot(row, inverse, column * m);
    if (factor === 0) continue;
    for (let i = 0; i < m; i++) inverse[column * m + i]! -= factor * inverse[at * m + i]!;
  }
}

/** Makes the option of a tie its group's key, and the old key that tie's option. */
export function swapKey(basis: PriceBasis, at: number, group: number, groupOf: Int32Array): void {
  const { tie, rows, inverse, key } = basis;
  const m = tie.length;
  for (let other = 0; other < m; other++) {
    if (other === at || tie[other] === FREE || tie[other]! >= groupOf.length) continue;
    if (groupOf[tie[other]!] !== group) continue;
    for (let i = 0; i < m; i++) {
      rows[other * m + i]! -= rows[at * m + i]!;
      inverse[at * m + i]! += inverse[other * m + i]!;
    }
  }
  for (let i = 0; i < m; i++) {
    rows[at * m + i]! *= -1;
    inverse[at * m + i]! *= -1;
  }
  const option = tie[at]!;
  tie[at] = key[group]!;
  key[group] = option;
}

function dot(row: Float64Array, columns: Float64Array, from: number): number {
  let sum = 0;
  for (let i = 0; i < row.length; i++) sum += row[i]! * columns[from + i]!;
  return sum;
}
