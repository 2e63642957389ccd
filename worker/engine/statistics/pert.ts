import { DomainError } from "../domainError.ts";
import type { ThreePoint } from "../quantity.ts";

/** Mean of a three-point estimate, (a + 4m + b) / 6, in the estimate's own unit. Malcolm, Roseboom, Clark & Fazar 1959. */
export function pertMean({ optimistic, likely, pessimistic }: ThreePoint): number {
  return (optimistic + 4 * likely + pessimistic) / 6;
}

/** Standard deviation of a three-point estimate, (b - a) / 6. Malcolm et al. 1959; not that of the beta distribution. */
export function pertSd({ optimistic, pessimistic }: ThreePoint): number {
  return (pessimistic - optimistic) / 6;
}

/** Refuses an estimate that is not 0 <= optimistic <= likely <= pessimistic. */
export function requireThreePoint(estimate: ThreePoint, argument: string): void {
  const { optimistic, likely, pessimistic } = estimate;
  if (0 <= optimistic && optimistic <= likely && likely <= pessimistic && Number.isFinite(pessimistic))
    return;
  const value = `${optimistic}, ${likely}, ${pessimistic}`;
  throw new DomainError("out-of-domain", argument, value, "0 <= optimistic <= likely <= pessimistic");
}
