import { DomainError } from "../domainError.ts";

/**
 * Quantile of a sample by linear interpolation between order statistics at 1 + (n - 1) p: type 7 of
 * Hyndman & Fan, The American Statistician 50 (1996) 361-365.
 * @param sorted at least one number, rising
 * @param probability 0 to 1
 * @throws DomainError for an empty sample or a probability outside 0 to 1
 */
export function sampleQuantile(sorted: ArrayLike<number>, probability: number): number {
  if (sorted.length === 0) throw new DomainError("out-of-domain", "sorted", "none", "at least one number");
  if (!(probability >= 0 && probability <= 1)) {
    throw new DomainError("out-of-domain", "probability", probability, "a number from 0 to 1");
  }
  const position = (sorted.length - 1) * probability;
  const below = Math.floor(position);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (position - below) * (high - low);
}
