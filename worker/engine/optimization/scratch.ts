import type { ChoiceTables } from "./choiceTables.ts";

/** Working memory of the search, filled in by the bound: what stands in it is of the last bound worked out. */
export interface Scratch {
  /** By option: value less prices times use. */
  readonly reduced: Float64Array;
  readonly alive: Uint8Array;
  /** By group: the best reduced value. */
  readonly best: Float64Array;
  readonly keyShare: Float64Array;
  /** By row: what the keys leave. */
  readonly slack: Float64Array;
  /** By tie. */
  readonly share: Float64Array;
  readonly direction: Float64Array;
  readonly entering: Float64Array;
  /** By option: how fast its cost rises along the direction. */
  readonly rise: Float64Array;
  /** By group: where along the direction its key is overtaken, and by which option. */
  readonly turn: Float64Array;
  readonly rival: Int32Array;
  readonly tied: Uint8Array;
}

export function scratchFor({ first, value, limit }: ChoiceTables): Scratch {
  const groups = first.length - 1;
  return {
    reduced: new Float64Array(value.length),
    alive: new Uint8Array(value.length),
    best: new Float64Array(groups),
    keyShare: new Float64Array(groups),
    slack: new Float64Array(limit.length),
    share: new Float64Array(limit.length),
    direction: new Float64Array(limit.length),
    entering: new Float64Array(limit.length),
    rise: new Float64Array(value.length),
    turn: new Float64Array(groups),
    rival: new Int32Array(groups),
    tied: new Uint8Array(groups),
  };
}
