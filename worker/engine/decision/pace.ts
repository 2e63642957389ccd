import type { MoneyPerHour } from "../quantity.ts";

/** How the user's time counts. */
export interface Pace {
  readonly hourlyGoal: MoneyPerHour;
  /** Mean of the common speed factor; 1 is a practised hobbyist. */
  readonly speedFactor: number;
  /** Standard deviation of its logarithm. */
  readonly speedSpread: number;
}
