import type { ChoiceTables } from "./choiceTables.ts";
import { type Incumbent, offer } from "./incumbent.ts";
import type { OpenGroups } from "./openGroups.ts";
import type { Scratch } from "./scratch.ts";

/** Open problems with at most so many combinations are run through: each costs less than a bound. */
const FEW = 1024;

export function fewCombinations({ groups, start }: OpenGroups): boolean {
  let combinations = 1;
  for (let place = 0; place < groups.length && combinations <= FEW; place++) {
    combinations *= start[place + 1]! - start[place]!;
  }
  return combinations <= FEW;
}

/** Runs through the combinations of the open groups, leaving off where regrets take the bound to the best found or a budget is gone over. */
export function enumerate(
  tables: ChoiceTables,
  open: OpenGroups,
  bound: number,
  settled: Int32Array,
  incumbent: Incumbent,
  least: () => number,
  scratch: Scratch,
): void {
  const { use, tolerance } = tables;
  const { reduced, best } = scratch;
  const rows = tolerance.length;
  const left = open.left.slice();
  const visit = (place: number, promised: number): void => {
    if (promised <= least()) return;
    if (place === open.groups.length) {
      offer(tables, incumbent, settled);
      return;
    }
    const group = open.groups[place]!;
    for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
      const option = open.options[at]!;
      let fits = true;
      for (let row = 0; row < rows; row++) {
        left[row]! -= use[option * rows + row]!;
        if (left[row]! < -tolerance[row]!) fits = false;
      }
      settled[group] = option;
      if (fits) visit(place + 1, promised - best[group]! + reduced[option]!);
      for (let row = 0; row < rows; row++) left[row]! += use[option * rows + row]!;
    }
  };
  visit(0, bound);
}
