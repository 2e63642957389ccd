import { type PathProblem, type PricePath, pricedPath } from "./demand/pricePath.ts";

/** From each to the next, prices fall to this share. */
const STEP = 0.8;

/**
 * A plan's prices lowered throughout, further and further, to the lowest there are: what its owner may turn to once an offer says that the going rate is low. The
 * prices planned beforehand are best for all going rates together, and too high for too long where it is a low one.
 */
export function comingDown(
  problem: PathProblem,
  { prices }: Pick<PricePath, "prices">,
): readonly PricePath[] {
  const paths: PricePath[] = [];
  for (let share = STEP; share * prices[0]! > problem.range.lowest; share *= STEP)
    paths.push(
      pricedPath(
        problem,
        prices.map((price) => price * share),
      ),
    );
  return paths;
}
