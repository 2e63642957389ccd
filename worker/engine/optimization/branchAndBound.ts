import type { ChoiceTables } from "./choiceTables.ts";
import { enumerate, fewCombinations } from "./enumeration.ts";
import { improve } from "./improvement.ts";
import { type Incumbent, offer } from "./incumbent.ts";
import { lagrangianBound } from "./lagrangianBound.ts";
import { narrowed, type OpenGroups, withSettled } from "./openGroups.ts";
import { copyOf, FREE, type PriceBasis } from "./priceBasis.ts";
import { repair } from "./repair.ts";
import type { Scratch } from "./scratch.ts";

/** What a search has come to. */
export interface Search {
  readonly nodes: number;
  /** No choice is worth more than this and the best found. */
  readonly openBound: number;
}

/**
 * Depth-first search from an open problem and the prices that are best for it. Each node leaves out the options whose regret (what the bound would lose
 * by them) takes it to the best found, branches on the group whose relaxed choice is most divided, and takes the options in order of regret.
 *
 * The search runs in passes. Each looks only for choices worth more than a target, at first close under the root's bound, then ever lower until one is
 * found or the target is no more than what is known: what is found above its pass's target is the best of all. So hardly a node is visited whose bound is
 * much below the best total, as would be while only poor choices are known.
 */
export function branchAndBound(
  tables: ChoiceTables,
  root: OpenGroups,
  prices: PriceBasis,
  incumbent: Incumbent,
  nodeLimit: number,
  scratch: Scratch,
): Search {
  const settled = new Int32Array(tables.first.length - 1);
  const candidate = new Int32Array(settled.length);
  let [nodes, target, unexplored] = [0, -Infinity, -Infinity];
  const least = (): number => Math.max(incumbent.value, target) + tables.tie;

  const visit = (parent: OpenGroups, basis: PriceBasis, promised: number): void => {
    if (promised <= least()) return;
    if (nodes >= nodeLimit && incumbent.value > -Infinity) {
      unexplored = Math.max(unexplored, promised);
      return;
    }
    nodes++;
    let open = narrowed(tables, parent, everyOption, settled);
    if (open === null) return;
    let bound = lagrangianBound(tables, open, basis, least(), scratch);
    if (bound <= least()) return;
    candidate.set(settled);
    for (const group of open.groups) candidate[group] = basis.key[group]!;
    if (incumbent.value === -Infinity) repair(tables, open, candidate);
    offer(tables, incumbent, candidate);
    const worthwhile = (option: number): boolean =>
      bound - scratch.best[tables.groupOf[option]!]! + scratch.reduced[option]! > least();
    if (!open.options.every(worthwhile)) {
      open = narrowed(tables, open, worthwhile, settled);
      if (open === null) return;
      bound = lagrangianBound(tables, open, basis, least(), scratch);
      if (bound <= least()) return;
    }
    if (open.groups.length === 0) {
      offer(tables, incumbent, settled);
      return;
    }
    if (fewCombinations(open)) {
      enumerate(tables, open, bound, settled, incumbent, target, scratch);
      return;
    }
    const place = mostDivided(tables, open, basis, scratch);
    const group = open.groups[place]!;
    const branches = Array.from(
      open.options.subarray(open.start[place]!, open.start[place + 1]!),
      (option) => ({
        option,
        promised: bound - scratch.best[group]! + scratch.reduced[option]!,
      }),
    ).sort((a, b) => b.promised - a.promised);
    branches.forEach(({ option, promised }, index) => {
      const branch = withSettled(tables, open, place, option);
      settled[group] = option;
      visit(branch, index === branches.length - 1 ? basis : copyOf(basis), promised);
    });
  };

  const open = narrowed(tables, root, everyOption, settled);
  if (open === null) return { nodes, openBound: -Infinity };
  const basis = copyOf(prices);
  const bound = lagrangianBound(tables, open, basis, incumbent.value + tables.tie, scratch);
  if (bound <= incumbent.value + tables.tie) return { nodes, openBound: bound };
  candidate.set(settled);
  for (const group of open.groups) candidate[group] = basis.key[group]!;
  if (repair(tables, open, candidate)) offer(tables, incumbent, candidate);
  improve(tables, open, incumbent);
  let openBound = bound;
  const gap = bound - incumbent.value;
  for (const part of PARTS) {
    target = part < 1 && gap < Infinity ? bound - part * gap : -Infinity;
    visit(open, copyOf(basis), bound);
    openBound = Math.min(openBound, Math.max(unexplored, target + tables.tie));
    if (unexplored > -Infinity || incumbent.value >= target) break;
  }
  return { nodes, openBound };
}

/** The passes' targets: so far down from the root's bound to what is known there. */
const PARTS = [1 / 8, 1 / 4, 1 / 2, 1];

function everyOption(): boolean {
  return true;
}

/** The place of the open group that whole options would move furthest in use: by each tied option's difference from the key, times how far its share is from whole. */
function mostDivided(
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
