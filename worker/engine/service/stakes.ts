import type { Money, Probability } from "../quantity.ts";

/** What the sale of the finished bike makes of condition. */
export interface Sale {
  /** Expected takings after haggling and fee when penalties summing to `gain` are taken away. */
  readonly takings: (gain: Probability) => Money;
  /** The most that taking a penalty away can ever add to the takings. */
  readonly largestMarginal: (penalty: Probability) => Money;
}

/** What is at stake in a plan, as far as planning depends on it. */
export interface Stakes {
  /** The sale, with the finish as it is or painted over. */
  readonly sale: (repainted: boolean) => Sale;
  /** Takings less work of what is left to do once the work has ended the frame. */
  readonly salvage: Money;
  /** Penalty of paint and metal that are not polished. */
  readonly notPolished: Probability;
}
