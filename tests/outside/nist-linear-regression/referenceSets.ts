import data from "./data.json" with { type: "json" };

export type SetName = keyof typeof data;

/** A reference set with its certified values. */
export interface ReferenceSet {
  readonly powers?: readonly number[];
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly residualSd: number;
  readonly rows: readonly (readonly number[])[];
}

export const SETS: Readonly<Record<SetName, ReferenceSet>> = data;
export const SET_NAMES = Object.keys(data) as readonly SetName[];

/** The regression's design: powers of x where the set is a polynomial, else a constant and the columns as they stand. */
export function designOf({ rows, powers }: ReferenceSet): {
  readonly design: readonly (readonly number[])[];
  readonly y: readonly number[];
} {
  return {
    design: rows.map(([, ...x]) =>
      powers === undefined ? [1, ...x] : powers.map((power) => x[0]! ** power),
    ),
    y: rows.map(([y]) => y!),
  };
}

/** Correct decimal digits: -log10 of the relative error, of the absolute one where nought is certified; 16 at most. */
export function digits(found: number, certified: number): number {
  const error = Math.abs(found - certified) / (certified === 0 ? 1 : Math.abs(certified));
  return error === 0 ? 16 : -Math.log10(error);
}
