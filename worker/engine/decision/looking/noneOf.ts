import type { Check } from "../../inspection/check.ts";
import type { Probability } from "../../quantity.ts";
import type { UnseenFaults } from "../../service/unseenFaults.ts";
import type { Situation } from "../situation.ts";

/** Chance that no check stands at a level of a kind, some of them known and the classes moved by it. */
export type NoneOf = (ranks: readonly number[], classes: Float64Array) => Probability;

/**
 * In a class of history the checks are independent: the chance that none is of the kind is a product.
 * @param kind of level that is asked about
 * @returns for checks that become known together: a function of their ranks and the classes' weights
 */
export function noneOf(
  { faults, weights }: Situation["unseen"],
  kind: (check: Check, rank: number) => boolean,
): (known: readonly UnseenFaults[]) => NoneOf {
  const own = new Map<UnseenFaults, Float64Array>();
  for (const one of faults) {
    const chances = chancesOf(one, kind, weights.length);
    if (chances) own.set(one, chances);
  }
  return (known) => {
    const none = new Float64Array(weights.length).fill(1);
    for (const [one, chances] of own)
      if (!known.includes(one)) for (let z = 0; z < none.length; z++) none[z]! *= 1 - chances[z]!;
    return (ranks, classes) => {
      for (let at = 0; at < ranks.length; at++) if (kind(known[at]!.check, ranks[at]!)) return 0;
      let sum = 0;
      for (let z = 0; z < classes.length; z++) sum += classes[z]! * none[z]!;
      return sum;
    };
  };
}

/** Chance of each class that a check is of the kind; null where it cannot be. */
function chancesOf(
  { check, chances }: UnseenFaults,
  kind: (check: Check, rank: number) => boolean,
  classes: number,
): Float64Array | null {
  let sum: Float64Array | null = null;
  chances.forEach((chance, rank) => {
    if (chance === null || !kind(check, rank)) return;
    sum ??= new Float64Array(classes);
    for (let z = 0; z < classes; z++) sum[z]! += chance[z]!;
  });
  return sum;
}
