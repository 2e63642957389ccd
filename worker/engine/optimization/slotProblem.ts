/**
 * Exact choice of one option in each slot where options share resources.
 *
 * A slot is a thing to be settled (a fault); an option settles it with a set of resources (operations, dismantling steps, a
 * borrowed tool). A resource used by several chosen options is paid once (set union). The value grows with the sum of the gains
 * of the settled slots, not additively: price is exponential in condition. We maximise value(gain) - cost(union).
 */
export interface Slot {
  /** Resource indices of each option, each once. */
  readonly options: readonly (readonly number[])[];
  /** Gain when settled by any option. */
  readonly gain: number;
  readonly mandatory: boolean;
  /** The most that settling this slot can ever add to the value, whatever else is chosen. */
  readonly largestMarginal: number;
}

export interface SlotProblem {
  readonly slots: readonly Slot[];
  /** Cost of each resource, once. Not negative. */
  readonly cost: ArrayLike<number>;
  /** Resources in any case. */
  readonly base: readonly number[];
  /** Value of a sum of gains. */
  readonly value: (gain: number) => number;
}
