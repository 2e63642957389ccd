import type { ChoiceTables } from "./choiceTables.ts";
import type { OpenGroups } from "./openGroups.ts";
import { FREE, type PriceBasis } from "./priceBasis.ts";
import type { Scratch } from "./scratch.ts";

/**
 * The place of the open group that whole options would move furthest: the use of each tied option less that of its key, times how far its share in the relaxed
 * choice is from whole.
 */
export function mostDivided(
  { groupOf }: ChoiceTables,
  open: OpenGroups,
  { tie, rows }: PriceBasis,
  { share, keyShare: moved }: Scratch,
): number {
  const m = tie.length;
  moved.fill(0);
  for (let at = 0; at < m; at++) {
    const option = tie[at]!;
    if (option === FREE || option >= groupOf.length) continue;
    let distance = 0;
    for (let row = 0; row < m; row++) distance += Math.abs(rows[at * m + row]!);
    moved[groupOf[option]!]! += distance * Math.min(share[at]!, 1 - share[at]!);
  }
  let found = 0;
  for (let place = 1; place < open.groups.length; place++) {
    if (moved[open.groups[place]!]! > moved[open.groups[found]!]!) found = place;
  }
  return found;
}
