import { DomainError } from "../domainError.ts";
import { squared } from "./elementary/powers.ts";
import { monotoneRoot } from "./monotoneRoot.ts";

/** Points and weights of a quadrature rule: the integral of f is near the sum of weight x f(node). */
export interface Quadrature {
  /** Rising. */
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Gauss-Hermite rule for the standard normal: the mean of f(Z) is near the sum of weight x f(node), exact for
 * polynomials up to degree 2 order - 1. The weights sum to 1.
 * @param order number of nodes, 1 to 64
 * @throws DomainError for another order
 * Method: the nodes are the roots of the (probabilists') Hermite polynomial, bracketed by those of the order below,
 * and weight = 1 / (order x h(node)^2), h the normalised polynomial of the order below (Abramowitz & Stegun 25.4.46).
 */
export function gaussHermite(order: number): Quadrature {
  if (!(Number.isInteger(order) && order >= 1 && order <= 64)) {
    throw new DomainError("out-of-domain", "order", order, "a whole number from 1 to 64");
  }
  let nodes: number[] = [0];
  for (let degree = 2; degree <= order; degree++) nodes = rootsBetween(nodes, degree);
  const weights = nodes.map((node) => 1 / (order * squared(hermite(order - 1, node))));
  return { nodes, weights };
}

/** Roots of the polynomial of a degree, one between each two neighbours of the degree below and one beyond each end. */
function rootsBetween(below: readonly number[], degree: number): number[] {
  const bound = 2 * Math.sqrt(degree);
  const fences = [-bound, ...below, bound];
  return Array.from({ length: degree }, (_, index) => {
    const sign = (degree - index) % 2 === 1 ? 1 : -1;
    const rough = monotoneRoot((x) => sign * hermite(degree, x), fences[index]!, fences[index + 1]!);
    // One Newton step takes the root to rounding; the derivative is sqrt(degree) times the polynomial below.
    return rough - hermite(degree, rough) / (Math.sqrt(degree) * hermite(degree - 1, rough));
  });
}

/** Hermite polynomial scaled to mean square 1 under the standard normal. */
function hermite(degree: number, x: number): number {
  let [previous, value] = [0, 1];
  for (let n = 1; n <= degree; n++) {
    [previous, value] = [value, (x * value - Math.sqrt(n - 1) * previous) / Math.sqrt(n)];
  }
  return value;
}
