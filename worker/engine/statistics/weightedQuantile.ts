import { DomainError } from "../domainError.ts";

/**
 * Quantile of a distribution on finitely many values: the least value whose weights up to it reach the probability.
 * @param values in any order
 * @param weights one for each value, none negative, at least one above 0; need not sum to 1
 * @param probability 0 to 1
 * @throws DomainError where values or weights are empty, unequal in number or negative, or the probability is outside 0 to 1
 */
export function weightedQuantile(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  probability: number,
): number {
  const total = requireWeights(values, weights);
  if (!(probability >= 0 && probability <= 1)) {
    throw new DomainError("out-of-domain", "probability", probability, "a number from 0 to 1");
  }
  const order = Array.from({ length: values.length }, (_, index) => index)
    .filter((index) => weights[index]! > 0)
    .sort((a, b) => values[a]! - values[b]!);
  // Rounding of the running sum must not push a probability that is reached exactly one value on.
  const reach = probability * total * (1 - 4 * Number.EPSILON);
  let sum = 0;
  for (const index of order) {
    sum += weights[index]!;
    if (sum >= reach) return values[index]!;
  }
  return values[order[order.length - 1]!]!;
}

function requireWeights(values: ArrayLike<number>, weights: ArrayLike<number>): number {
  if (values.length !== weights.length) {
    throw new DomainError(
      "out-of-domain",
      "weights",
      weights.length,
      `as many entries as values (${values.length})`,
    );
  }
  let total = 0;
  for (let index = 0; index < weights.length; index++) {
    if (!(weights[index]! >= 0)) {
      throw new DomainError("out-of-domain", "weights", weights[index], "numbers of at least 0");
    }
    total += weights[index]!;
  }
  if (!(total > 0)) throw new DomainError("out-of-domain", "weights", total, "at least one number above 0");
  return total;
}
