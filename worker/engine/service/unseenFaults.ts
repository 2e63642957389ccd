import type { Check } from "../inspection/check.ts";
import type { UnseenCheck } from "../inspection/finding.ts";

/** A check not looked at, as planning sees it. */
export interface UnseenFaults {
  readonly check: Check;
  readonly position: UnseenCheck["position"];
  /** Chance of each level in each of the classes that are likely at all; null where it cannot be. */
  readonly chances: readonly (Float64Array | null)[];
}

/**
 * The checks not looked at that may bring work. Papers are owed, not guessed, and what another finding clears brings none.
 * @param classes the classes of history that are likely at all
 */
export function unseenFaults(
  unseen: readonly UnseenCheck[],
  checks: ReadonlyMap<string, Check>,
  classes: readonly number[],
): readonly UnseenFaults[] {
  return unseen.flatMap(({ check: id, acquittedBy, position, byClass }): UnseenFaults[] => {
    const check = checks.get(id)!;
    if (acquittedBy !== null || isPaper(check)) return [];
    const chances = check.levels.map((_, rank) => chancesAt(byClass, rank, check.levels.length, classes));
    return [{ check, position, chances }];
  });
}

function chancesAt(
  byClass: Float64Array,
  rank: number,
  levels: number,
  classes: readonly number[],
): Float64Array | null {
  const chances = new Float64Array(classes.length);
  let any = false;
  for (let place = 0; place < chances.length; place++) {
    const chance = byClass[classes[place]! * levels + rank]!;
    chances[place] = chance;
    any ||= chance > 0;
  }
  return any ? chances : null;
}

/** Papers are asked for, not repaired: they are owed. */
export function isPaper(check: Check): boolean {
  return check.group === "paperwork" && check.id !== "equipment";
}
