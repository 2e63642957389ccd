import type { ChoiceTables } from "./choiceTables.ts";

/** What a node of the search leaves open: groups with two options or more, and what the settled ones leave of the budgets. */
export interface OpenGroups {
  readonly groups: Int32Array;
  /** First place of each open group in `options`, and their number at the end. */
  readonly start: Int32Array;
  readonly options: Int32Array;
  /** Left of each budget. A hair below 0 where the tolerance was used. */
  readonly left: Float64Array;
  /** Of the settled groups. */
  readonly value: number;
}

/** Every group with every option. */
export function allOpen({ first, limit }: ChoiceTables): OpenGroups {
  const count = first.length - 1;
  return {
    groups: Int32Array.from({ length: count }, (_, group) => group),
    start: first,
    options: Int32Array.from({ length: first[count]! }, (_, option) => option),
    left: limit,
    value: 0,
  };
}

/**
 * Without the options that are not wanted or do not fit beside the least that the other groups use; groups with one option left are settled. One round: what a
 * settled group leaves is looked at in the next node.
 * @param choice option by group, where settled ones are written
 * @returns null where a group has no option left
 */
export function narrowed(
  tables: ChoiceTables,
  open: OpenGroups,
  wanted: (option: number) => boolean,
  choice: Int32Array,
): OpenGroups | null {
  const wantedOnes = onlyWanted(open, wanted);
  if (wantedOnes === null) return null;
  const { use, value, tolerance } = tables;
  const rows = tolerance.length;
  const { start, options } = wantedOnes;
  const least = leastUses(tables, wantedOnes);
  const spare = open.left.slice();
  for (let at = 0; at < least.length; at++) spare[at % rows]! -= least[at]!;
  for (let row = 0; row < rows; row++) if (spare[row]! < -tolerance[row]!) return null;

  const left = open.left.slice();
  let [settledValue, size, kept] = [open.value, 0, 0];
  // What is kept is moved to the front of the same tables: it never overtakes what is still to be read.
  for (let place = 0, from = 0; place < open.groups.length; place++) {
    const end = start[place + 1]!;
    const first = kept;
    for (let at = from; at < end; at++) {
      const option = options[at]!;
      let fits = true;
      for (let row = 0; row < rows; row++) {
        const more = use[option * rows + row]! - least[place * rows + row]!;
        if (more > spare[row]! + tolerance[row]!) fits = false;
      }
      if (fits) options[kept++] = option;
    }
    from = end;
    if (kept === first) return null;
    const group = open.groups[place]!;
    if (kept === first + 1) {
      const option = options[first]!;
      choice[group] = option;
      settledValue += value[option]!;
      for (let row = 0; row < rows; row++) left[row]! -= use[option * rows + row]!;
      kept = first;
    } else {
      wantedOnes.groups[size] = group;
      size += 1;
      start[size] = kept;
    }
  }
  return {
    groups: wantedOnes.groups.subarray(0, size),
    start: start.subarray(0, size + 1),
    options: options.subarray(0, kept),
    left,
    value: settledValue,
  };
}

/** A copy with the wanted options, or null where a group has none. */
function onlyWanted(open: OpenGroups, wanted: (option: number) => boolean): OpenGroups | null {
  const start = new Int32Array(open.start.length);
  const options = new Int32Array(open.options.length);
  let kept = 0;
  for (let place = 0; place < open.groups.length; place++) {
    for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
      const option = open.options[at]!;
      if (wanted(option)) options[kept++] = option;
    }
    if (kept === start[place]) return null;
    start[place + 1] = kept;
  }
  return { ...open, groups: open.groups.slice(), start, options };
}

/** Row by row for each open group, the least that one of its options uses. */
function leastUses({ use, limit }: ChoiceTables, { groups, start, options }: OpenGroups): Float64Array {
  const rows = limit.length;
  const least = new Float64Array(groups.length * rows).fill(Infinity);
  for (let place = 0; place < groups.length; place++) {
    for (let at = start[place]!; at < start[place + 1]!; at++) {
      for (let row = 0; row < rows; row++) {
        const amount = use[options[at]! * rows + row]!;
        if (amount < least[place * rows + row]!) least[place * rows + row] = amount;
      }
    }
  }
  return least;
}

/** With one more group settled. */
export function withSettled(
  { use, value }: ChoiceTables,
  open: OpenGroups,
  place: number,
  option: number,
): OpenGroups {
  const { groups, start, options, left } = open;
  const [from, to] = [start[place]!, start[place + 1]!];
  const size = groups.length - 1;
  const fewer: OpenGroups = {
    groups: new Int32Array(size),
    start: new Int32Array(size + 1),
    options: new Int32Array(options.length - (to - from)),
    left: left.map((amount, row) => amount - use[option * left.length + row]!),
    value: open.value + value[option]!,
  };
  fewer.groups.set(groups.subarray(0, place));
  fewer.groups.set(groups.subarray(place + 1), place);
  fewer.options.set(options.subarray(0, from));
  fewer.options.set(options.subarray(to), from);
  for (let at = 0; at <= size; at++)
    fewer.start[at] = at <= place ? start[at]! : start[at + 1]! - (to - from);
  return fewer;
}
