/**
 * Units, said in the type. Plain numbers at run time: every figure in the engine carries its unit in its type's or its field's name.
 */

/** An amount of money in the currency of the request; the edge repeats that currency beside every figure. */
export type Money = number;
/** A time in minutes. Everything is summed in minutes and divided by 60 once, where hours are reported. */
export type Minutes = number;
/** A time in hours; only for reported results. */
export type Hours = number;
/** A length in millimetres. */
export type Millimetres = number;
/** A number from 0 to 1. */
export type Probability = number;
/** Money for each hour of the user's own time. */
export type MoneyPerHour = number;

/** Three-point estimate: optimistic <= likely <= pessimistic, all in the same unit. */
export interface ThreePoint {
  readonly optimistic: number;
  readonly likely: number;
  readonly pessimistic: number;
}
