import { expect, test } from "vitest";
import { gaussHermite } from "../../../worker/engine/statistics/gaussHermite.ts";

/** The mean of z^power under the standard normal: 0 for odd powers, (power - 1)!! for even ones. */
function moment(power: number): number {
  if (power % 2 === 1) return 0;
  let product = 1;
  for (let factor = power - 1; factor > 1; factor -= 2) product *= factor;
  return product;
}

test.each([1, 2, 3, 5, 7, 12])(
  "order %i gives the normal's moments exactly up to degree 2 order - 1",
  (order) => {
    const { nodes, weights } = gaussHermite(order);
    for (let power = 0; power < 2 * order; power++) {
      const sum = nodes.reduce((total, node, i) => total + weights[i]! * node ** power, 0);
      const size = nodes.reduce((total, node, i) => total + weights[i]! * Math.abs(node) ** power, 0);
      expect(Math.abs(sum - moment(power))).toBeLessThan(1e-13 * Math.max(1, size));
    }
  },
);

test("nodes rise and mirror each other, weights sum to one", () => {
  const { nodes, weights } = gaussHermite(64);
  expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 14);
  nodes.forEach((node, i) => {
    expect(node).toBeCloseTo(-nodes[63 - i]!, 12);
    if (i > 0) expect(node).toBeGreaterThan(nodes[i - 1]!);
  });
});

test("an order it cannot serve is refused", () => {
  expect(() => gaussHermite(0)).toThrow("order requires a whole number from 1 to 64, got 0");
  expect(() => gaussHermite(2.5)).toThrow("got 2.5");
});
