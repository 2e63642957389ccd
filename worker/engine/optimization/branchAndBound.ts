import type { ChoiceTables } from "./choiceTables.ts";
import { enumerate, fewCombinations } from "./enumeration.ts";
import { improve } from "./improvement.ts";
import { type Incumbent, offer } from "./incumbent.ts";
import { lagrangianBound } from "./lagrangianBound.ts";
import { mostDivided } from "./mostDivided.ts";
import { narrowed, type OpenGroups, withSettled } from "./openGroups.ts";
import { copyOf, type PriceBasis } from "./priceBasis.ts";
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
  let [nodes, target, unexplored] = [0, -Infinity, -Infinity];
  /** What a bound must exceed. */
  const least = (): number => Math.max(incumbent.value, target) + tables.tie;
  /** The bound with an option taken: the least bound less its regret. */
  const promiseOf = (bound: number, option: number): number =>
    bound - scratch.best[tables.groupOf[option]!]! + scratch.reduced[option]!;

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
    const candidate = withKeys(open, basis, settled);
    if (incumbent.value === -Infinity) repair(tables, open, candidate);
    offer(tables, incumbent, candidate);
    const worthwhile = (option: number): boolean => promiseOf(bound, option) > least();
    if (!open.options.every(worthwhile)) {
      open = narrowed(tables, open, worthwhile, settled);
      if (open === null) return;
      bound = lagrangianBound(tables, open, basis, least(), scratch);
      if (bound <= least()) return;
    }
    if (fewCombinations(open)) enumerate(tables, open, bound, settled, incumbent, least, scratch);
    else branch(open, basis, bound);
  };

  const branch = (open: OpenGroups, basis: PriceBasis, bound: number): void => {
    const place = mostDivided(tables, open, basis, scratch);
    const options = open.options.subarray(open.start[place]!, open.start[place + 1]!);
    const branches = Array.from(options, (option) => ({ option, promised: promiseOf(bound, option) }));
    branches.sort((a, b) => b.promised - a.promised);
    for (const { option, promised } of branches) {
      settled[open.groups[place]!] = option;
      visit(withSettled(tables, open, place, option), copyOf(basis), promised);
    }
  };

  const open = narrowed(tables, root, everyOption, settled);
  if (open === null) return { nodes, openBound: -Infinity };
  const basis = copyOf(prices);
  const bound = lagrangianBound(tables, open, basis, least(), scratch);
  if (bound <= least()) return { nodes, openBound: bound };
  const candidate = withKeys(open, basis, settled);
  if (repair(tables, open, candidate)) offer(tables, incumbent, candidate);
  const promising = narrowed(tables, open, (option) => promiseOf(bound, option) > least(), candidate);
  if (promising !== null) improve(tables, promising, incumbent);
  const gap = bound - incumbent.value;
  let openBound = bound;
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

/** The settled options, and the keys of the open groups. */
function withKeys(open: OpenGroups, { key }: PriceBasis, settled: Int32Array): Int32Array {
  const choice = settled.slice();
  for (const group of open.groups) choice[group] = key[group]!;
  return choice;
}
