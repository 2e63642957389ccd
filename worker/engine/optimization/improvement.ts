import type { ChoiceTables } from "./choiceTables.ts";
import { type Incumbent, overrun } from "./incumbent.ts";
import type { OpenGroups } from "./openGroups.ts";

/** Another option in one group. */
interface Switch {
  readonly group: number;
  readonly option: number;
  readonly gain: number;
}

/** Local search from the best found: while one switch, or two together, gain and fit, the pair that gains most is taken. */
export function improve(tables: ChoiceTables, open: OpenGroups, incumbent: Incumbent): void {
  if (incumbent.value === -Infinity) return;
  const { choice } = incumbent;
  const over = overrun(tables, choice);
  for (;;) {
    const switches = switchesFrom(tables, open, choice);
    const found = bestPair(tables, switches, choice, over);
    if (found === null) return;
    for (const { group, option, gain } of found) {
      addUse(tables, over, choice[group]!, option);
      choice[group] = option;
      incumbent.value += gain;
    }
  }
}

/** Every switch, those that gain most first. */
function switchesFrom({ value }: ChoiceTables, open: OpenGroups, choice: Int32Array): readonly Switch[] {
  const switches: Switch[] = [];
  for (let place = 0; place < open.groups.length; place++) {
    const group = open.groups[place]!;
    for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
      const option = open.options[at]!;
      if (option === choice[group]) continue;
      switches.push({ group, option, gain: value[option]! - value[choice[group]!]! });
    }
  }
  return switches.sort((a, b) => b.gain - a.gain);
}

function bestPair(
  tables: ChoiceTables,
  switches: readonly Switch[],
  choice: Int32Array,
  over: Float64Array,
): readonly Switch[] | null {
  const { use, tolerance, tie } = tables;
  const rows = over.length;
  const after = new Float64Array(rows);
  let [found, most]: [readonly Switch[] | null, number] = [null, tie];
  for (let one = 0; one < switches.length; one++) {
    const first = switches[one]!;
    if (2 * first.gain <= most) break;
    after.set(over);
    addUse(tables, after, choice[first.group]!, first.option);
    if (first.gain > most && keeps(after, tolerance)) [found, most] = [[first], first.gain];
    for (let two = one + 1; two < switches.length; two++) {
      const second = switches[two]!;
      if (first.gain + second.gain <= most) break;
      if (second.group === first.group) continue;
      const [from, to] = [choice[second.group]! * rows, second.option * rows];
      let fits = true;
      for (let row = 0; row < rows && fits; row++) {
        fits = after[row]! + use[to + row]! - use[from + row]! <= tolerance[row]!;
      }
      if (fits) [found, most] = [[first, second], first.gain + second.gain];
    }
  }
  return found;
}

function keeps(over: Float64Array, tolerance: Float64Array): boolean {
  for (let row = 0; row < over.length; row++) if (over[row]! > tolerance[row]!) return false;
  return true;
}

function addUse({ use }: ChoiceTables, over: Float64Array, from: number, to: number): void {
  const rows = over.length;
  for (let row = 0; row < rows; row++) over[row]! += use[to * rows + row]! - use[from * rows + row]!;
}
