import type { ChoiceTables } from "./choiceTables.ts";
import { fits, overrun } from "./incumbent.ts";
import type { OpenGroups } from "./openGroups.ts";

/** Switches a group after which an overrun is given up: rounding could turn them in a circle. */
const MOST_SWITCHES = 4;

/**
 * Turns a choice into one that fits, in place: while a budget is overrun, the switch that loses least for what it takes off the overrun; then the switch that
 * gains most, while one fits.
 * @returns whether it fits
 */
export function repair(tables: ChoiceTables, open: OpenGroups, choice: Int32Array): boolean {
  const { tolerance } = tables;
  const over = overrun(tables, choice);
  for (let switches = 0; !fits(tables, over); switches++) {
    if (switches === MOST_SWITCHES * choice.length) return false;
    const cheapest = bestSwitch(tables, open, choice, (loss, from, to) => {
      let relief = 0;
      for (let row = 0; row < over.length; row++) {
        const before = Math.max(0, over[row]! - tolerance[row]!);
        const after = Math.max(
          0,
          over[row]! - tolerance[row]! + tables.use[to + row]! - tables.use[from + row]!,
        );
        relief += (before - after) / Math.max(1, tables.limit[row]!);
      }
      return relief > 1e-12 ? -Math.max(loss, tables.tie) / relief : -Infinity;
    });
    if (cheapest === null) return false;
    take(tables, choice, over, cheapest);
  }
  for (;;) {
    const best = bestSwitch(tables, open, choice, (loss, from, to) => {
      if (loss >= -tables.tie) return -Infinity;
      for (let row = 0; row < over.length; row++) {
        if (over[row]! + tables.use[to + row]! - tables.use[from + row]! > tolerance[row]!) return -Infinity;
      }
      return -loss;
    });
    if (best === null) return true;
    take(tables, choice, over, best);
  }
}

/** The option of highest merit to switch to, or null; uses start at `from` and `to`. */
function bestSwitch(
  { value, limit }: ChoiceTables,
  open: OpenGroups,
  choice: Int32Array,
  merit: (loss: number, from: number, to: number) => number,
): { readonly group: number; readonly option: number } | null {
  const rows = limit.length;
  let [highest, found] = [-Infinity, -1];
  let groupFound = -1;
  for (let place = 0; place < open.groups.length; place++) {
    const group = open.groups[place]!;
    const old = choice[group]!;
    for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
      const option = open.options[at]!;
      if (option === old) continue;
      const one = merit(value[old]! - value[option]!, old * rows, option * rows);
      if (one > highest) [highest, found, groupFound] = [one, option, group];
    }
  }
  return found < 0 ? null : { group: groupFound, option: found };
}

function take(
  { use, limit }: ChoiceTables,
  choice: Int32Array,
  over: Float64Array,
  { group, option }: { readonly group: number; readonly option: number },
): void {
  const rows = limit.length;
  for (let row = 0; row < rows; row++) {
    over[row]! += use[option * rows + row]! - use[choice[group]! * rows + row]!;
  }
  choice[group] = option;
}
